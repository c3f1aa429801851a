package outrigger.shapes.mesh.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import outrigger.shapes.exact.ExactPoint;
import outrigger.shapes.mesh.face.Faces;
import outrigger.shapes.mesh.meet.Arranger;
import outrigger.shapes.mesh.meet.SheetSegments;
import outrigger.shapes.mesh.outline.Outline;
import outrigger.shapes.num.IntList;
import outrigger.shapes.num.Interrupt;
import outrigger.shapes.num.Shares;

/** Lays and labels the sheets of all planes that have one and outlines what they bound, in the order of the planes. */
public final class SheetLabels {
  private final Faces faces;
  private final Arranger arranger;
  private final Supplier<SheetWalker> walker;
  private final IntList planes = new IntList();

  /** An edge that bounds a sheet's part of the result. */
  private record Edge(int group, ExactPoint from, ExactPoint to) {}

  /**
   * For the planes of some faces.
   *
   * @param walker gives each thread one
   */
  public SheetLabels(Faces faces, Arranger arranger, Supplier<SheetWalker> walker) {
    this.faces = faces;
    this.arranger = arranger;
    this.walker = walker;
    for (int p = 0; p < arranger.sheets().size(); p++) {
      if (arranger.sheets().get(p) != null) {
        planes.add(p);
      }
    }
  }

  /** Writes what all sheets bound into an outline. */
  public void outline(Outline outline) {
    if (faces.workers().threads() == 1) {
      label(0, planes.size(), new Sheet(faces), walker.get(),
          (group, from, to) -> outline.add(group, outline.vertex(from), outline.vertex(to)));
      return;
    }
    SheetSegments segments = arranger.segments();
    Shares shares = Shares.of(faces.workers(), planes.size(),
        i -> segments.countOf(planes.get(i), arranger.sheets().get(planes.get(i))));
    shares.eachInOrder(() -> {
      Sheet sheet = new Sheet(faces);
      SheetWalker own = walker.get();
      return (from, to) -> {
        List<Edge> edges = new ArrayList<>();
        label(from, to, sheet, own, (group, a, b) -> edges.add(new Edge(group, a, b)));
        return edges;
      };
    }, edges -> edges.forEach(e -> outline.add(e.group, outline.vertex(e.from), outline.vertex(e.to))));
  }

  /** Lays and labels the sheets of the planes from one up to another, and tells the edges that these bound. */
  private void label(int from, int to, Sheet sheet, SheetWalker own, Sheet.EdgeTaker taker) {
    for (int i = from; i < to; i++) {
      Interrupt.check();
      int p = planes.get(i);
      if (!arranger.sheets().get(p).isEmpty()) {
        sheet.lay(p, arranger.segments().of(p, arranger.sheets().get(p), arranger.contacts()), arranger.unlaid(p));
        own.label(sheet);
        sheet.outline(taker);
      }
      for (int f : arranger.loneFaces(p)) {
        LoneFace.of(faces, f).outline(own, arranger.unlaid(p), taker);
      }
    }
  }
}
