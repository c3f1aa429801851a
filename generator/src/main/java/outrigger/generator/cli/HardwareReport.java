package outrigger.generator.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import outrigger.generator.accessory.Words;
import outrigger.generator.joint.Chosen;
import outrigger.generator.joint.HardwareLine;
import outrigger.generator.joint.HardwareList;
import outrigger.generator.joint.Joint;
import outrigger.generator.joint.Member;

/** A list of hardware in words: what to have, what it is for, and how each screw's length comes about. */
final class HardwareReport {
  private HardwareReport() {}

  static List<String> lines(HardwareList list) {
    List<String> lines = new ArrayList<>();
    if (list.lines().isEmpty()) {
      return List.of("The plan's parts take no hardware.");
    }
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("article", "count", "spares", "on hand", "to buy"));
    for (HardwareLine line : list.lines()) {
      rows.add(List.of(line.article(), String.valueOf(line.count()), String.valueOf(line.spares()),
          String.valueOf(line.onHand()), String.valueOf(line.toBuy())));
    }
    lines.addAll(AlignedTable.lines(rows));
    lines.add("");
    for (HardwareLine line : list.lines()) {
      lines.add(line.article() + ":");
      line.uses().forEach(use -> lines.add("  " + use));
    }
    if (!list.screws().joints().isEmpty()) {
      lines.add("");
      list.screws().joints().forEach(chosen -> lines.addAll(joint(chosen)));
      lines.add("");
      lines.addAll(list.screws().proofs());
    }
    return lines;
  }

  private static List<String> joint(Chosen chosen) {
    Joint joint = chosen.of().joint();
    String length = joint.leastGrip() == joint.mostGrip() ? Words.mm(joint.mostGrip())
        : Words.number(joint.leastGrip()) + " to " + Words.mm(joint.mostGrip());
    String grip = joint.grip().size() == 1 && joint.leastGrip() == joint.mostGrip() ? grip(joint) + " mm"
        : grip(joint) + " = " + length;
    return List.of(chosen.of().name() + ": " + joint.count() + " x " + chosen.screw().article(),
        "  " + grip + ", then " + Words.mm(joint.thread().length()) + " of " + joint.thread().name() + ": "
            + Words.number(joint.shortest()) + " to " + Words.mm(joint.longest()) + " will do",
        "  " + Words.mm(chosen.engagement()) + " in the thread, end " + end(chosen) + ", " + head(joint));
  }

  private static String grip(Joint joint) {
    return joint.grip().stream().map(HardwareReport::member).collect(Collectors.joining(" + "));
  }

  private static String member(Member member) {
    return member.name() + " " + (member.least() == member.most() ? Words.number(member.most())
        : Words.number(member.least()) + " to " + Words.number(member.most()));
  }

  private static String end(Chosen chosen) {
    return chosen.protrusion() == 0 ? "within it" : "up to " + Words.mm(chosen.protrusion()) + " out behind it";
  }

  private static String head(Joint joint) {
    double above = joint.head().above();
    String lies = above > 0 ? "head " + Words.mm(above) + " above the face"
        : above < 0 ? "head " + Words.mm(-above) + " below the face" : "head flush";
    return joint.head().around() > 0 ? lies + ", " + Words.mm(joint.head().around()) + " round it" : lies;
  }
}
