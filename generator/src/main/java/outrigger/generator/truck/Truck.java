package outrigger.generator.truck;

import java.util.List;
import java.util.Optional;
import outrigger.presets.Printer;

/**
 * One truck as measured.
 *
 * @param truck what concerns it as a whole
 * @param rail the rails as written
 * @param rails the same along their length
 * @param holes rows of holes in the webs
 * @param mounts where the body rests, in the order of the plan
 * @param body the kit body
 * @param keepOuts room the body takes
 * @param bumper the bumper, if there is one
 * @param items what it carries
 * @param between space between the rails that is left to items, if there is any
 * @param drive motor and steering, if they are said
 * @param printer what its parts are printed on
 */
public record Truck(Told<TruckParams> truck, Told<RailParams> rail, Rails rails, List<Told<HoleRow>> holes,
    List<Told<MountParams>> mounts, Told<BodyParams> body, List<Told<KeepOut>> keepOuts,
    Optional<Told<BumperParams>> bumper, List<Told<ItemParams>> items, Optional<Told<BetweenParams>> between,
    Optional<Told<DriveParams>> drive, Printer printer) {
  public Truck {
    holes = List.copyOf(holes);
    mounts = List.copyOf(mounts);
    keepOuts = List.copyOf(keepOuts);
    items = List.copyOf(items);
  }
}
