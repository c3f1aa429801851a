package outrigger.generator.run;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import outrigger.generator.accessory.Words;
import outrigger.generator.fit.Choice;
import outrigger.generator.fit.Site;
import outrigger.generator.fit.TruckFit;
import outrigger.generator.joint.Articles;
import outrigger.generator.joint.Fitted;
import outrigger.generator.joint.Fixings;
import outrigger.generator.joint.Piece;
import outrigger.generator.magnet.Facing;
import outrigger.generator.param.Origin;
import outrigger.generator.truck.MountParams;

/** What the body carries over its mounts: facing magnets or steel, which belong to no printed part of the chassis. */
final class BodyHalves {
  private BodyHalves() {}

  /** One entry for each site of a solved truck over which no pad is made, as pads list their own. */
  static List<Fitted> of(Optional<TruckFit> fit, List<Draft> drafts) {
    Set<String> padded = drafts.stream().flatMap(draft -> draft.request().site().stream()).collect(Collectors.toSet());
    return fit.map(solved -> solved.sites().stream().filter(site -> !padded.contains(site.name()))
        .map(site -> of(site, solved.choices().get(site))).toList())
        .orElse(List.of());
  }

  private static Fitted of(Site site, Choice choice) {
    MountParams mount = site.mount().record();
    Piece piece = mount.facing() == Facing.MAGNET ? Articles.of(choice.magnet()).times(choice.stack())
        : new Piece(Piece.Kind.OTHER, "steel " + Words.number(mount.steelWidth()) + " x " + thickness(mount), 1);
    String name = "the body over " + site.name();
    Origin where = site.mount().where();
    return new Fitted(name, name, new Fixings(List.of(), List.of(piece)), where);
  }

  private static String thickness(MountParams mount) {
    return mount.steel().isFree() ? "the stack-up's thickness" : Words.mm(mount.steel().mm());
  }
}
