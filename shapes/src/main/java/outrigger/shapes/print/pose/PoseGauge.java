package outrigger.shapes.print.pose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import outrigger.shapes.num.Decimals;
import outrigger.shapes.print.Fact;
import outrigger.shapes.print.Gauge;
import outrigger.shapes.print.Limit;
import outrigger.shapes.print.Reading;
import outrigger.shapes.print.Specimen;
import outrigger.shapes.print.hang.OverhangGauge;

/** Ranks the ways a part could be laid on the bed, and says whether the way it stands is best. */
public final class PoseGauge implements Gauge {
  /** Poses told at most: own choice. */
  private static final int TOLD = 3;
  /** Cosine from which on a direction is called by its axis: within 0.8 degrees. */
  private static final double STRAIGHT = 0.9999;
  private static final List<String> SIDES = List.of("its left side (-X)", "its right side (+X)", "its front (-Y)",
      "its back (+Y)", "its underside (-Z)", "its top (+Z)");

  @Override
  public String name() {
    return "pose";
  }

  @Override
  public Reading read(Specimen s) {
    List<double[]> downs = Poses.of(s);
    List<Pose> poses = new ArrayList<>(s.workers().each(downs.size(), i -> PoseTrial.of(s, downs.get(i))));
    if (s.reading(new OverhangGauge()).concerns().isEmpty()) {
      poses.set(0, poses.get(0).carried());
    }
    Pose stated = poses.get(0);
    String across = s.load().map(axis -> ", layers that a load along " + axis + " pulls apart")
        .orElse(", layers across its length");
    Comparator<Pose> rank = PoseRank.of(s.measures().volume(), s.limit(Limit.CONTACT));
    List<Pose> ranked = new ArrayList<>(poses);
    ranked.sort(rank);
    Pose best = ranked.get(0);
    List<Fact> facts = new ArrayList<>();
    boolean isBest = rank.compare(stated, best) == 0;
    long better = ranked.stream().filter(pose -> rank.compare(pose, stated) < 0).count();
    facts.add(new Fact("better-poses", better, "poses", isBest
        ? "stands in the best of " + poses.size() + " poses tried: " + words(stated, across)
        : "would print better with " + direction(best) + " on the bed: " + words(best, across) + "; as it stands: "
            + words(stated, across)));
    for (int i = isBest ? 0 : 1; i < Math.min(TOLD, ranked.size()); i++) {
      Pose pose = ranked.get(i);
      if (pose.stands() && pose.fits() && pose.contact() >= s.limit(Limit.CONTACT) && !pose.liesLike(stated)) {
        facts.add(new Fact("pose-" + (i + 1), pose.support(), "mm3", "another pose, " + direction(pose)
            + " on the bed: " + words(pose, across)));
      }
    }
    return Reading.of(List.of(), facts);
  }

  private static String words(Pose pose, String across) {
    String support = pose.support() < 1 ? "no support"
        : "support of up to " + Decimals.fixed(pose.support(), 0) + " mm3";
    String standing = pose.stands() ? "stands on " + Decimals.fixed(pose.contact(), 0) + " mm2"
        : "does not stand for itself";
    return support + ", " + standing + ", " + Decimals.fixed(pose.height(), 1) + " mm high"
        + (pose.layersAcross() ? across : "") + (pose.fits() ? "" : ", does not fit the bed");
  }

  private static String direction(Pose pose) {
    double[] down = {pose.downX(), pose.downY(), pose.downZ()};
    for (int k = 0; k < SIDES.size(); k++) {
      if (down[k / 2] * (k % 2 == 0 ? -1 : 1) > STRAIGHT) {
        return SIDES.get(k);
      }
    }
    return "its side towards (" + number(down[0]) + ", " + number(down[1]) + ", " + number(down[2]) + ")";
  }

  private static String number(double value) {
    String text = Decimals.fixed(value, 2);
    return text.equals("-0.00") ? "0.00" : text;
  }
}
