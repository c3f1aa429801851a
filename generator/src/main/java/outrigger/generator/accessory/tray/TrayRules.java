package outrigger.generator.accessory.tray;

import outrigger.generator.accessory.Words;
import outrigger.generator.accessory.feature.Bed;
import outrigger.generator.accessory.feature.ScrewHole;
import outrigger.generator.param.BadDimension;

/** What the dimensions of a tray must keep to. */
record TrayRules(TrayFrame frame) {

  /** Refuses a box wider than the room between the rails, or one without a width outboard. */
  static void requireWidth(TrayParams p, double reach) {
    if (p.place() != TrayPlace.BETWEEN && p.width() == 0) {
      throw new BadDimension("width", "an outboard tray has no second rail to take its width from, and width is 0",
          "Give width.");
    }
    if (p.place() == TrayPlace.BETWEEN && !TrayFrame.keeps(2 * reach, p.width())) {
      throw new BadDimension("width", "a tray " + Words.mm(p.width()) + " wide does not go between rails "
          + Words.mm(p.railSpacing()) + " apart with " + Words.mm(p.clearance()) + " clearance on each side: "
          + Words.mm(2 * reach) + " is the most, so it is " + Words.mm(p.width() - 2 * reach) + " too wide",
          "Lower width, or set it to 0 to take all the room there is.");
    }
  }

  void check() {
    requireBox();
    requireRadius();
    Bed.require(params().printer(), params().length(), 2 * frame.reach(), frame.tabTop(), "length");
    if (params().tabs() > 0) {
      requireTabs();
      requireScrewInRail();
      requireScrewInTab();
    }
  }

  private TrayParams params() {
    return frame.params();
  }

  private void requireBox() {
    TrayParams p = params();
    requireLeast("wall", "walls of " + Words.mm(p.wall()), p.wall(), p.printer().minimumWall(),
        "the thinnest wall of printer " + p.printer().name());
    requireLeast("floor", "a floor of " + Words.mm(p.floor()), p.floor(), 2 * p.printer().layer(),
        "two layers of printer " + p.printer().name());
    requireLeast("wall-height", "walls of " + Words.mm(p.wallHeight()) + " on a floor of " + Words.mm(p.floor()),
        p.wallHeight() - p.floor(), p.printer().layer(), "one layer above the floor");
    double least = Math.min(frame.insideX(), frame.insideY()) * 2;
    if (least < p.printer().minimumWall()) {
      throw new BadDimension("wall", "walls of " + Words.mm(p.wall()) + " leave no room inside a box "
          + Words.mm(p.length()) + " long and " + Words.mm(2 * frame.halfWidth()) + " wide",
          "Lower wall, or make the tray larger.");
    }
  }

  private static void requireLeast(String key, String what, double value, double least, String why) {
    if (!TrayFrame.keeps(value, least)) {
      throw new BadDimension(key, what + " fall short of " + Words.mm(least) + ", " + why, "Raise " + key + ".");
    }
  }

  private void requireRadius() {
    double most = Math.min(frame.halfLength(), frame.halfWidth());
    if (params().cornerRadius() > most) {
      throw new BadDimension("corner-radius", "a corner radius of " + Words.mm(params().cornerRadius())
          + " is more than half the shorter side, " + Words.mm(most), "Lower corner-radius.");
    }
  }

  private void requireTabs() {
    TrayParams p = params();
    double outer = (p.tabs() - 1) / 2.0 * p.tabPitch() + p.tabWidth() / 2;
    double room = frame.halfLength() - p.cornerRadius();
    if (!TrayFrame.keeps(room, outer)) {
      throw new BadDimension("tab-pitch", "the outer tabs end " + Words.mm(outer) + " from the middle, but the straight "
          + "part of the wall ends at " + Words.mm(room), "Lower tab-pitch or tab-width, or lengthen the tray.");
    }
    double gap = p.tabPitch() - p.tabWidth();
    if (p.tabs() > 1 && !TrayFrame.keeps(gap, p.printer().minimumWall())) {
      throw new BadDimension("tab-pitch", "tabs " + Words.mm(p.tabWidth()) + " wide every " + Words.mm(p.tabPitch())
          + " leave " + Words.mm(Math.max(0, gap)) + " between them, below " + Words.mm(p.printer().minimumWall()),
          "Raise tab-pitch, or make fewer tabs.");
    }
    if (!TrayFrame.keeps(frame.halfWidth() - Math.max(p.wall(), p.tabThickness()), p.tabThickness())) {
      throw new BadDimension("tab-thickness", "tabs " + Words.mm(p.tabThickness()) + " thick fill a box "
          + Words.mm(2 * frame.halfWidth()) + " wide", "Lower tab-thickness, or widen the tray.");
    }
  }

  private void requireScrewInRail() {
    TrayParams p = params();
    double top = p.screwDrop() - p.screw().diameter() / 2;
    double bottom = p.railHeight() - p.screwDrop() - p.screw().diameter() / 2;
    if (top < 0 || bottom < 0) {
      throw new BadDimension("screw-drop", "an " + p.screw().size() + " screw " + Words.mm(p.screwDrop())
          + " below the rail's top leaves a web " + Words.mm(p.railHeight()) + " high at its "
          + (top < 0 ? "top" : "bottom"), "Put screw-drop between " + Words.mm(p.screw().diameter() / 2) + " and "
          + Words.mm(p.railHeight() - p.screw().diameter() / 2) + ".");
    }
  }

  private void requireScrewInTab() {
    TrayParams p = params();
    ScrewHole hole = frame.hole().hole();
    double under = frame.holeZ() - hole.mouth() / 2;
    double least = Math.max(p.floor(), hole.wall());
    if (!TrayFrame.keeps(under, least)) {
      throw new BadDimension("screw-drop", "the screw hole, " + Words.mm(hole.mouth()) + " wide, its middle "
          + Words.mm(Math.abs(frame.holeZ())) + (frame.holeZ() < 0 ? " below" : " above")
          + " the underside of the tray, " + (under < 0 ? "breaks " + Words.mm(-under) + " through it"
          : "keeps " + Words.mm(under) + " from it") + ", and needs " + Words.mm(least) + " of floor and wall",
          "Lower screw-drop or raise drop by " + Words.mm(least - under) + ".");
    }
    if (!TrayFrame.keeps(p.tabWidth(), hole.landDiameter())) {
      throw new BadDimension("tab-width", "a tab " + Words.mm(p.tabWidth()) + " wide is too narrow for its hole of "
          + Words.mm(hole.mouth()) + " with " + Words.mm(hole.wall()) + " of wall on both sides",
          "Raise tab-width to " + Words.mm(hole.landDiameter()) + " or more.");
    }
    hole.requireThickness(frame.tabDepth(), "tab-thickness");
  }
}
