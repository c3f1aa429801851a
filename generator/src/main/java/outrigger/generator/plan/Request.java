package outrigger.generator.plan;

import outrigger.generator.accessory.Accessory;
import outrigger.generator.param.Origin;
import outrigger.generator.param.ParamValues;

/**
 * One part, or set of parts, that is wanted.
 *
 * @param name what its files are called
 * @param accessory what it is
 * @param values what was given for its parameters, not yet checked
 * @param where where it was asked for
 */
public record Request<P extends Record>(String name, Accessory<P> accessory, ParamValues<P> values, Origin where) {}
