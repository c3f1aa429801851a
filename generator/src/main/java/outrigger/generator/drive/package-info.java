/**
 * How a truck drives and steers, reckoned from motor, gears, wheels, mass and slope.
 *
 * <p>The motor is taken as an ideal brushed one, whose torque falls in a straight line from stall to no load; tyres grip
 * up to a fixed share of what they carry; the truck stands stiff on its wheels. Newton, millimetre, gram, degree.
 *
 * <p>Not promised: heat, battery sag, slipping clutches, soft ground.
 */
package outrigger.generator.drive;
