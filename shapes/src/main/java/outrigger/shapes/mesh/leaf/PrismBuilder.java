package outrigger.shapes.mesh.leaf;

import java.util.ArrayList;
import java.util.List;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.profile.Region;
import outrigger.shapes.solid.EdgeForm;
import outrigger.shapes.solid.Prism;

/** Builds a prism as a stack of sections, the outline moved in by what draft and rims ask at each height. */
final class PrismBuilder {
  /** A height and how far the outline is moved into the matter there, mm. */
  private record Section(double z, double inset) {}

  private final Prism prism;
  private final PolyhedronBuilder out = new PolyhedronBuilder();

  PrismBuilder(Prism prism) {
    this.prism = prism;
  }

  Polyhedron build() {
    List<Section> sections = sections();
    List<Region> regions = prism.profile().regions();
    List<int[][][]> outlines = new ArrayList<>();
    for (Section section : sections) {
      outlines.add(Inset.of(regions, section.inset));
    }
    for (int r = 0; r < regions.size(); r++) {
      addRegion(r, sections, outlines);
    }
    return out.build();
  }

  /** The sections from bottom to top; of those at one height on the grid the first. */
  private List<Section> sections() {
    List<Section> sections = new ArrayList<>();
    for (Section s : rim(prism.bottomEdge())) {
      addDrafted(prism.bottom() + s.z, s.inset, sections);
    }
    List<Section> top = rim(prism.topEdge());
    for (int i = top.size() - 1; i >= 0; i--) {
      addDrafted(prism.top() - top.get(i).z, top.get(i).inset, sections);
    }
    return sections;
  }

  private void addDrafted(double z, double inset, List<Section> sections) {
    if (sections.stream().noneMatch(s -> Grid.fromMm(s.z) == Grid.fromMm(z))) {
      double draft = prism.draftDegrees() == 0 ? 0
          : (z - prism.bottom()) * StrictMath.tan(StrictMath.toRadians(prism.draftDegrees()));
      sections.add(new Section(z, inset + draft));
    }
  }

  /** Sections of a rim from the end face inward: distance from the face, and inset. */
  private static List<Section> rim(EdgeForm form) {
    if (form instanceof EdgeForm.Chamfer chamfer) {
      return List.of(new Section(0, chamfer.leg()), new Section(chamfer.leg(), 0));
    } else if (form instanceof EdgeForm.Fillet fillet) {
      return fillet(fillet.radius());
    } else if (form instanceof EdgeForm.Sharp) {
      return List.of(new Section(0, 0));
    }
    throw new AssertionError(form);
  }

  /** A quarter circle by chords that stay within the chord error of it. */
  private static List<Section> fillet(double r) {
    // half the angle of a chord; a radius below twice the chord error is cut off straight, as one a little above is
    double half = StrictMath.acos(Math.max(0.5, 1 - Profile.CHORD_ERROR / r));
    // a quotient that is whole but for rounding, far below this in doubles, stays that number
    int steps = (int) Math.ceil(Math.PI / 4 / half - 1e-9);
    List<Section> sections = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      double a = Math.PI / 2 * i / steps;
      sections.add(new Section(i == steps ? r : r - r * StrictMath.cos(a), i == steps ? 0 : r - r * StrictMath.sin(a)));
    }
    return sections;
  }

  /** Adds the walls and caps of a region, whose rings have as many corners in each section. */
  private void addRegion(int region, List<Section> sections, List<int[][][]> outlines) {
    int[][] below = null;
    for (int s = 0; s < sections.size(); s++) {
      int[][] here = numbered(outlines.get(s)[region], Grid.fromMm(sections.get(s).z));
      if (s == 0) {
        addCap(here, true);
      } else {
        addWalls(below, here);
      }
      if (s == sections.size() - 1) {
        addCap(here, false);
      }
      below = here;
    }
  }

  /** Numbers of the vertices of rings at a height. */
  private int[][] numbered(int[][] rings, int z) {
    int[][] loops = new int[rings.length][];
    for (int r = 0; r < rings.length; r++) {
      out.startRing();
      loops[r] = new int[rings[r].length / 2];
      for (int i = 0; i < loops[r].length; i++) {
        loops[r][i] = out.vertex(rings[r][2 * i], rings[r][2 * i + 1], z);
      }
    }
    return loops;
  }

  private void addWalls(int[][] below, int[][] above) {
    for (int r = 0; r < below.length; r++) {
      for (int i = 0; i < below[r].length; i++) {
        int j = (i + 1) % below[r].length;
        out.wall(below[r][i], below[r][j], above[r][j], above[r][i]);
      }
    }
  }

  /** An end face; corners that fell together count once, and an end that shrank to a point has no face. */
  private void addCap(int[][] loops, boolean down) {
    List<int[]> cap = new ArrayList<>();
    for (int[] loop : loops) {
      int[] kept = PolyhedronBuilder.withoutRepeats(loop);
      if (kept.length == 2) {
        throw new ShapeException("an end face of a prism shrinks to a line",
            "Use a smaller chamfer, fillet or draft.");
      }
      if (kept.length > 2) {
        cap.add(down ? LeafBuilder.reversed(kept) : kept);
      }
    }
    if (!cap.isEmpty()) {
      out.face(cap.toArray(new int[0][]));
    }
  }
}
