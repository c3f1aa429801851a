package outrigger.shapes.stl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outrigger.shapes.check.CheckedMesh;
import outrigger.shapes.check.Meshes;
import outrigger.shapes.check.Proof;
import outrigger.shapes.check.Soup;
import outrigger.shapes.check.SpoiledMeshes;
import outrigger.shapes.mesh.Mesher;
import outrigger.shapes.num.Axis;
import outrigger.shapes.num.ShapeException;
import outrigger.shapes.profile.Profile;
import outrigger.shapes.solid.EdgeForm;
import outrigger.shapes.solid.Faceted;
import outrigger.shapes.solid.Prism;
import outrigger.shapes.solid.Revolution;
import outrigger.shapes.solid.Solid;

/** Solids read from STL files as operands: they behave as the solids that were written. */
class SolidFromStlTest {
  private static final Profile PLATE = Profile.roundedRectangle(30, 12, 2)
      .cut(Profile.hole(3.4).move(-9, 0), Profile.hole(3.4).move(9, 0));

  @TempDir
  private Path folder;

  private static CheckedMesh proven(Solid solid) {
    Proof.Verdict verdict = Proof.judge(Mesher.mesh(solid));
    assertEquals(List.of(), verdict.findings());
    return verdict.proven().orElseThrow();
  }

  private Faceted reread(Solid solid) throws IOException, StlException {
    Path file = folder.resolve("solid.stl");
    StlWriter.write(proven(solid), "solid", file);
    return StlReader.read(file).toSolid();
  }

  private Faceted read(Soup soup) throws IOException, StlException {
    Path file = folder.resolve("soup.stl");
    RawStl.write(soup.mesh(), file);
    return StlReader.read(file).toSolid();
  }

  private static List<Solid> solids() {
    return List.of(Prism.of(PLATE, 0, 4.2), Prism.of(Profile.rectangle(20, 9), 0, 5).withDraft(4),
        Prism.of(Profile.post(12), 0, 6).withTopEdge(EdgeForm.fillet(1)), Revolution.sphere(11, 32),
        Revolution.cone(9, 4, 0, 7).turn(Axis.X, 31).move(1, 2, 3),
        Prism.of(PLATE, 0, 4).join(Prism.of(Profile.hexagon(8), 4, 9)).cut(Revolution.sphere(6, 24)));
  }

  @Test
  void toSolid_writtenSolid_isTheSameByItself() throws Exception {
    for (Solid solid : solids()) {
      CheckedMesh before = proven(solid);
      CheckedMesh after = proven(reread(solid));
      assertEquals(before.measures().volume(), after.measures().volume(), solid.toString());
      assertEquals(before.measures().facets(), after.measures().facets(), solid.toString());
    }
  }

  @Test
  void toSolid_asOperand_givesVolumesAndFacetsOfTheOriginal() throws Exception {
    Solid tool = Prism.of(Profile.rectangle(7, 7), -3, 3).turn(Axis.Z, 20).move(3, 2, 1);
    Solid flush = Prism.of(Profile.rectangle(4, 4), 0, 12);
    for (Solid solid : solids()) {
      Solid read = reread(solid);
      assertSame(solid.join(tool), read.join(tool));
      assertSame(solid.cut(tool), read.cut(tool));
      assertSame(Solid.common(solid, tool), Solid.common(read, tool));
      assertSame(solid.join(flush), read.join(flush));
      assertSame(solid.turn(Axis.Y, 90).mirror(Axis.X).move(1, 0, 2).join(tool),
          read.turn(Axis.Y, 90).mirror(Axis.X).move(1, 0, 2).join(tool));
    }
  }

  @Test
  void toSolid_besideItsOriginal_isTheSamePlace() throws Exception {
    for (Solid solid : solids()) {
      assertSame(solid, solid.join(reread(solid)));
      assertSame(solid, Solid.common(solid, reread(solid)));
      ShapeException nothing = assertThrows(ShapeException.class, () -> proven(solid.cut(reread(solid))));
      assertTrue(nothing.getMessage().startsWith("nothing is left"), nothing.getMessage());
    }
  }

  @Test
  void toSolid_turnedByAnyAngle_keepsItsVolumeWithinRounding() throws Exception {
    Solid read = reread(Prism.of(PLATE, 0, 4.2));
    double volume = proven(read).measures().volume();
    CheckedMesh turned = proven(read.turn(Axis.X, 12.5).turn(Axis.Z, 77).move(5, 6, 7));
    assertEquals(volume, turned.measures().volume(), turned.measures().area() * 0x1p-14);
  }

  @Test
  void toSolid_equalFiles_areEqualValues() throws Exception {
    Solid solid = Prism.of(PLATE, 0, 4.2);
    assertEquals(reread(solid), reread(solid));
    assertEquals(reread(solid).hashCode(), reread(solid).hashCode());
  }

  @Test
  void toSolid_inwardFile_isRefusedWithThePlace() {
    ShapeException e = assertThrows(ShapeException.class, () -> read(Meshes.box(1 << 14, 2 << 14, 3 << 14).flip()));
    assertTrue(e.getMessage().contains("inside out"), e.getMessage());
    assertTrue(e.getMessage().contains("(0.000, 0.000, 0.000) mm"), e.getMessage());
    assertTrue(e.getMessage().endsWith(e.advice()), e.getMessage());
  }

  @Test
  void toSolid_outOfRange_isRefusedWithTheFacet() {
    ShapeException e = assertThrows(ShapeException.class, () -> read(Meshes.box(1025 << 14, 1 << 14, 1 << 14)));
    assertTrue(e.getMessage().contains("of facet ") && e.getMessage().contains("1024"), e.getMessage());
  }

  @Test
  void toSolid_everySpoiledMesh_isRefusedInWords() throws Exception {
    int refused = 0;
    for (var entry : SpoiledMeshes.all().entrySet()) {
      if (entry.getValue().soup().size() == 0 || entry.getKey().equals("oneUnitOutOfRange")) {
        continue; // a file without facets does not come through the reader; a 32-bit float cannot say one unit too far
      }
      ShapeException e = assertThrows(ShapeException.class, () -> read(entry.getValue().soup()), entry.getKey());
      assertTrue(e.getMessage().contains("mm"), entry.getKey() + ": " + e.getMessage());
      refused++;
    }
    assertTrue(refused >= 40, "only " + refused);
  }

  private static void assertSame(Solid expected, Solid actual) {
    CheckedMesh e = proven(expected);
    CheckedMesh a = proven(actual);
    assertEquals(e.measures().volume(), a.measures().volume(), expected.toString());
    assertEquals(e.measures().facets(), a.measures().facets(), expected.toString());
    assertEquals(e.measures().pieces(), a.measures().pieces(), expected.toString());
  }
}
