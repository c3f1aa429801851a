package outrigger.generator.plan;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import outrigger.generator.accessory.Accessory;
import outrigger.generator.param.Origin;
import outrigger.generator.param.ParamValues;
import outrigger.shapes.num.Axis;
import outrigger.shapes.print.Limit;

/**
 * One part, or set of parts, that is wanted.
 *
 * @param name what its files are called
 * @param accessory what it is
 * @param values what was given for its parameters, not yet checked
 * @param where where it was asked for
 * @param limits limits of printing set for it alone
 * @param at x of its middle on the truck, where the plan or the solved truck says it
 * @param site the mount it belongs to, such as {@code cab-front-left}, where it was made for one
 * @param load axis of its file along which it is pulled or bent, if that is said
 */
public record Request<P extends Record>(String name, Accessory<P> accessory, ParamValues<P> values, Origin where,
    Map<Limit, Double> limits, Optional<Double> at, Optional<String> site, Optional<Axis> load) {
  public Request {
    limits = Map.copyOf(limits);
  }

  /** One without a place of its own. */
  public Request(String name, Accessory<P> accessory, ParamValues<P> values, Origin where, Map<Limit, Double> limits) {
    this(name, accessory, values, where, limits, Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** The same at a place along the truck. */
  Request<P> at(double x) {
    return new Request<>(name, accessory, values, where, limits, Optional.of(x), site, load);
  }

  /** The same made for a mount. */
  Request<P> over(String mount) {
    return new Request<>(name, accessory, values, where, limits, at, Optional.of(mount), load);
  }

  /** One without limits of its own. */
  public Request(String name, Accessory<P> accessory, ParamValues<P> values, Origin where) {
    this(name, accessory, values, where, Map.of());
  }

  /** The same with more limits, over those it has. */
  Request<P> with(Map<Limit, Double> more) {
    Map<Limit, Double> both = new EnumMap<>(Limit.class);
    both.putAll(limits);
    both.putAll(more);
    return new Request<>(name, accessory, values, where, both, at, site, load);
  }

  /** The same loaded along an axis, if one is given. */
  Request<P> loaded(Optional<Axis> along) {
    return along.isEmpty() ? this : new Request<>(name, accessory, values, where, limits, at, site, along);
  }
}
