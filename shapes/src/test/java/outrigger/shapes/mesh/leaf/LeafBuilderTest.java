package outrigger.shapes.mesh.leaf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import outrigger.shapes.check.Proof;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.Grid;
import outrigger.shapes.num.Placement;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.EdgeForm;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

class LeafBuilderTest {
  private static final Profile PLATE = Profile.roundedRectangle(20, 12, 3).cut(Profile.hole(4));

  private static Polyhedron sound(Prism prism) {
    Polyhedron p = LeafBuilder.prism(prism);
    Polyhedra.assertClosedAndFlat(p);
    return p;
  }

  private static Polyhedron sound(Revolution revolution) {
    Polyhedron p = LeafBuilder.revolution(revolution);
    Polyhedra.assertClosedAndFlat(p);
    return p;
  }

  private static String refusal(Prism prism) {
    return assertThrows(ShapeException.class, () -> LeafBuilder.prism(prism)).getMessage();
  }

  @Test
  void prism_straight_areaTimesHeight() {
    for (Profile profile : List.of(Profile.rectangle(3, 4), Profile.hole(3.4), PLATE, Profile.hexagon(5.5),
        Profile.text("B8 R0", 6, 0.9), PLATE.turn(17))) {
      Polyhedron p = sound(Prism.of(profile, -1, 4));
      assertEquals(profile.area() * 5, Polyhedra.volume(p), 1e-9 * profile.area());
    }
  }

  @Test
  void prism_holedRegions_eulerNumberCountsThem() {
    Profile two = PLATE.join(Profile.rectangle(2, 2).move(30, 0));
    assertEquals(2, Polyhedra.eulerNumber(sound(Prism.of(two, 0, 1))));
  }

  @Test
  void prism_chamferedRims_closedFormVolume() {
    Prism box = Prism.of(Profile.rectangle(10, 6), 0, 5).withTopEdge(EdgeForm.chamfer(1));
    // Frustum between similar-sided sections, by the prismoidal rule: (bottom + 4 middle + top) h / 6.
    double frustum = (60 + 4 * 9 * 5 + 8 * 4) / 6.0;
    assertEquals(60 * 4 + frustum, Polyhedra.volume(sound(box)), 1e-9);
    assertEquals(60 * 3 + 2 * frustum, Polyhedra.volume(sound(box.withBottomEdge(EdgeForm.chamfer(1)))), 1e-9);
  }

  @Test
  void prism_chamferedHole_widensAtTheRim() {
    Profile frame = Profile.rectangle(10, 10).cut(Profile.rectangle(4, 4));
    Polyhedron p = sound(Prism.of(frame, 0, 3).withTopEdge(EdgeForm.chamfer(0.5)));
    double outer = 100 * 2.5 + (100 + 4 * 9.5 * 9.5 + 81) * 0.5 / 6;
    double inner = 16 * 2.5 + (16 + 4 * 4.5 * 4.5 + 25) * 0.5 / 6;
    assertEquals(outer - inner, Polyhedra.volume(p), 1e-9);
  }

  @Test
  void prism_fillet_withinChordErrorOfTrueVolume() {
    double r = 1.5;
    Polyhedron p = sound(Prism.of(Profile.rectangle(10, 10), 0, 5).withTopEdge(EdgeForm.fillet(r)));
    // A side s = 10 - 2 r (1 - sin a) over the rounded height: the integral of s^2 dz, z = r (1 - cos a) from the top.
    double c = 10 - 2 * r;
    double rounded = c * c * r + 4 * c * r * r * Math.PI / 4 + 4 * r * r * r * 2 / 3;
    double truth = 100 * (5 - r) + rounded;
    double volume = Polyhedra.volume(p);
    assertTrue(volume < truth && volume > truth - 40 * r * Math.PI / 2 * Profile.CHORD_ERROR, truth + " " + volume);
  }

  @Test
  void prism_draft_frustumVolume() {
    double tan = Math.tan(Math.toRadians(5));
    for (double degrees : new double[] {5, -5}) {
      double top = 10 - 2 * 8 * Math.signum(degrees) * tan;
      Polyhedron p = sound(Prism.of(Profile.rectangle(10, 10), 0, 8).withDraft(degrees));
      assertEquals(8 / 3.0 * (100 + top * top + 10 * top), Polyhedra.volume(p), 200 * Grid.STEP);
    }
  }

  @Test
  void prism_everyRimAndDraft_closedAndFlat() {
    List<EdgeForm> rims = List.of(EdgeForm.sharp(), EdgeForm.chamfer(0.7), EdgeForm.fillet(0.8));
    for (Profile profile : List.of(PLATE, PLATE.turn(31), Profile.hexagon(7), Profile.slot(12, 4))) {
      for (EdgeForm low : rims) {
        for (EdgeForm high : rims) {
          for (double draft : new double[] {0, 2, -3}) {
            Polyhedron p = sound(new Prism(profile, 0, 6, draft, low, high));
            assertTrue(Polyhedra.volume(p) > 0);
          }
        }
      }
    }
  }

  @Test
  void prism_rimShrinkingToATip_closes() {
    Polyhedron p = sound(Prism.of(Profile.rectangle(4, 4), 0, 5).withTopEdge(EdgeForm.chamfer(2)));
    assertEquals(16 * 3 + 16 * 2 / 3.0, Polyhedra.volume(p), 1e-9);
  }

  @Test
  void prism_rimPastItsCornerRadius_refused() {
    assertTrue(refusal(Prism.of(Profile.roundedRectangle(10, 10, 0.5), 0, 5).withTopEdge(EdgeForm.chamfer(1)))
        .contains("1.000 mm"));
  }

  @Test
  void prism_rimsWiderThanAWall_refused() {
    Profile frame = Profile.rectangle(20, 20).cut(Profile.rectangle(16, 16));
    refusal(Prism.of(frame, 0, 5).withTopEdge(EdgeForm.chamfer(1.5)));
    refusal(Prism.of(frame, 0, 5).withBottomEdge(EdgeForm.fillet(1.2)));
    refusal(Prism.of(frame, 0, 5).withTopEdge(EdgeForm.chamfer(1)));
    refusal(Prism.of(frame, 0, 30).withDraft(4));
  }

  @Test
  void prism_outwardDraftMakingRegionsMeet_refused() {
    Profile pair = Profile.rectangle(4, 4).join(Profile.rectangle(4, 4).move(5, 0));
    refusal(Prism.of(pair, 0, 10).withDraft(-10));
    Profile nested = Profile.rectangle(20, 20).cut(Profile.rectangle(16, 16)).join(Profile.rectangle(15, 15));
    refusal(Prism.of(nested, 0, 10).withDraft(-10));
  }

  @Test
  void prism_endShrinkingPartlyToARidge_refused() {
    Profile tee = Profile.rectangle(10, 2).join(Profile.rectangle(4, 10).move(0, 4));
    refusal(Prism.of(tee, 0, 5).withTopEdge(EdgeForm.chamfer(1)));
  }

  @Test
  void prism_draftBeyondTheGrid_refused() {
    assertTrue(refusal(Prism.of(Profile.rectangle(2040, 10), 0, 100).withDraft(-10)).contains("grid"));
  }

  @Test
  void prism_ringsTouchingAtAPoint_meetsOnlyWhereTheResultStillTouches() {
    Profile corners = Profile.rectangle(4, 4).join(Profile.rectangle(4, 4).move(4, 4));
    sound(Prism.of(corners, 0, 3));
    assertThrows(ShapeException.class, () -> Mesher.mesh(Prism.of(corners, 0, 3)));
    Solid bridged = Prism.of(corners, 0, 3).join(Prism.of(Profile.rectangle(1, 1).move(2, 2), 0, 3));
    Proof.Verdict verdict = Proof.judge(Mesher.mesh(bridged));
    assertEquals(List.of(), verdict.findings());
    assertEquals((32 + 0.5) * 3, verdict.proven().orElseThrow().measures().volume(), 1e-9);
  }

  @Test
  void revolution_cone_frustumOfItsPolygon() {
    Polyhedron frustum = sound(Revolution.cone(10, 4, 0, 6));
    int sides = Revolution.cone(10, 4, 0, 6).sides();
    double unit = sides / 2.0 * Math.sin(2 * Math.PI / sides);
    assertEquals(unit * 6 / 3 * (25 + 4 + 10), Polyhedra.volume(frustum), 300 * Grid.STEP);
    assertEquals(unit * 25 * 6 / 3, Polyhedra.volume(sound(Revolution.cone(10, 0, 0, 6))), 300 * Grid.STEP);
    assertEquals(unit * 25 * 6 / 3, Polyhedra.volume(sound(Revolution.cone(0, 10, 0, 6))), 300 * Grid.STEP);
    assertEquals(2, Polyhedra.eulerNumber(frustum));
  }

  @Test
  void revolution_coneCutter_clearsTheTrueCone() {
    double truth = Math.PI * 6 / 3 * (25 + 4 + 10);
    assertTrue(Polyhedra.volume(sound(Revolution.coneCutter(10, 4, 0, 6))) > truth);
    assertTrue(Polyhedra.volume(sound(Revolution.cone(10, 4, 0, 6))) < truth);
  }

  @Test
  void revolution_coneCutterOfOneDiameter_sameCornersAsTheHole() {
    for (double d : new double[] {3.4, 2.7, 3.3, 5.1}) {
      Polyhedron cutter = LeafBuilder.revolution(Revolution.coneCutter(d, d, 0, 5));
      Polyhedron bore = LeafBuilder.prism(Prism.of(Profile.hole(d), 0, 5));
      assertEquals(Polyhedra.volume(bore), Polyhedra.volume(cutter), 0, "diameter " + d);
      Polyhedron post = LeafBuilder.prism(Prism.of(Profile.post(d), 0, 5));
      assertEquals(Polyhedra.volume(post), Polyhedra.volume(LeafBuilder.revolution(Revolution.cone(d, d, 0, 5))), 0);
    }
  }

  @Test
  void revolution_sphere_convergesBySecondOrder() {
    double truth = 4 / 3.0 * Math.PI * 1000;
    double coarse = truth - Polyhedra.volume(sound(Revolution.sphere(20, 32)));
    double fine = truth - Polyhedra.volume(sound(Revolution.sphere(20, 64)));
    assertEquals(4, coarse / fine, 0.05);
  }

  @Test
  void revolution_offAxis_hasAHandle() {
    Polyhedron ring = sound(Revolution.of(Profile.rectangle(2, 2).move(5, 0)));
    assertEquals(0, Polyhedra.eulerNumber(ring));
    int n = Revolution.of(Profile.rectangle(2, 2).move(5, 0)).sides();
    assertEquals(n / 2.0 * Math.sin(2 * Math.PI / n) * (36 - 16) * 2, Polyhedra.volume(ring), 300 * Grid.STEP);
  }

  @Test
  void revolution_holedSection_enclosesAVoid() {
    Profile frame = Profile.rectangle(6, 6).cut(Profile.rectangle(2, 2)).move(3, 0);
    Polyhedron hollow = sound(Revolution.of(frame));
    assertEquals(2, Polyhedra.eulerNumber(hollow));
  }

  @Test
  void revolution_sectionTouchingTheAxisAtOnePoint_closes() {
    Revolution wedge = Revolution.of(Profile.polygon(0, 0, 5, -2, 5, 2));
    int n = wedge.sides();
    double disc = n / 2.0 * Math.sin(2 * Math.PI / n) * 25;
    assertEquals(disc * 4 * 2 / 3, Polyhedra.volume(sound(wedge)), 300 * Grid.STEP);
  }

  @Test
  void revolution_circumscribedAsWideAsTheGrid_staysOnIt() {
    // Flats cross the axes, so no corner's coordinate exceeds the radius.
    sound(new Revolution(Profile.rectangle(1024, 2).move(512, 0), 8, true));
  }

  @Test
  void place_gridKeepingPlacements_keepVolumeAndClosure() {
    Polyhedron p = LeafBuilder.prism(Prism.of(PLATE, 0, 3).withTopEdge(EdgeForm.chamfer(0.5)));
    double volume = Polyhedra.volume(p);
    for (Placement placement : List.of(Placement.IDENTITY, Placement.turn(Axis.X, 90), Placement.turn(Axis.Z, 180),
        Placement.mirror(Axis.Y), Placement.turn(Axis.Y, 270).then(Placement.mirror(Axis.X))
            .then(Placement.move(1, 2.5, -3)))) {
      Polyhedron placed = LeafBuilder.place(p, placement);
      Polyhedra.assertClosedAndFlat(placed);
      assertEquals(volume, Polyhedra.volume(placed), 1e-9);
    }
    Polyhedron there = LeafBuilder.place(p, Placement.turn(Axis.Z, 90));
    assertArrayEquals(p.xyz(), LeafBuilder.place(there, Placement.turn(Axis.Z, -90)).xyz());
  }

  @Test
  void place_offTheGridOrBeyondIt_refused() {
    Polyhedron p = LeafBuilder.prism(Prism.of(PLATE, 0, 3));
    assertThrows(IllegalArgumentException.class, () -> LeafBuilder.place(p, Placement.turn(Axis.Z, 30)));
    assertThrows(ShapeException.class, () -> LeafBuilder.place(p, Placement.move(1020, 0, 0)));
  }
}
