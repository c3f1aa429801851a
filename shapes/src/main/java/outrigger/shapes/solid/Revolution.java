package outrigger.shapes.solid;

import outrigger.shapes.profile.Profile;

/**
 * A half section turned once round the Z axis.
 *
 * @param halfSection the section: its x is the radius (0 or more), its y becomes z
 * @param sides corners of each circle, a multiple of 4
 * @param circumscribed whether the flats (true, for cutters) or the corners (false) touch the true circle
 */
public record Revolution(Profile halfSection, int sides, boolean circumscribed) implements Solid {
  // factories to come: cone(bottomDiameter, topDiameter, bottom, top), coneCutter(...), sphere(diameter), of(section)
}
