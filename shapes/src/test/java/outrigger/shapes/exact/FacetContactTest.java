package outrigger.shapes.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FacetContactTest {
  /** Against the facet (0,0,0) (4,0,0) (0,4,0). */
  @ParameterizedTest(name = "{0}")
  @CsvSource(delimiter = '|', value = {
      "well apart                        | 9 9 9  12 9 9  9 12 9     | false",
      "above, parallel                   | 0 0 1  4 0 1  0 4 1       | false",
      "in plane, apart                   | 5 5 0  9 5 0  5 9 0       | false",
      "pierces the middle                | 1 1 -1  1 1 1  2 2 1      | true",
      "corner rests on the face          | 1 1 0  1 1 3  2 2 3       | true",
      "corner rests on an edge           | 2 0 0  2 -3 3  3 -3 3     | true",
      "corner just off the face          | 1 1 1  1 1 3  2 2 3       | false",
      "edges cross at a point            | 2 -1 0  2 1 0  2 0 5      | true",
      "edge lies along part of an edge   | 1 0 0  3 0 0  2 0 4       | true",
      "edge lies along an edge, in plane | 1 0 0  3 0 0  2 -4 0      | true",
      "in plane, crossing                | 1 -1 0  1 5 0  2 5 0      | true",
      "in plane, within                  | 1 1 0  2 1 0  1 2 0       | true",
      "in plane, around                  | -9 -9 0  20 -9 0  -9 20 0 | true",
      "in plane, corner on an edge       | 2 0 0  1 -2 0  3 -2 0     | true",
      "common corner only                | 0 0 0  -4 0 0  0 -4 0     | false",
      "common corner, standing up        | 0 0 0  0 0 4  -1 -1 4     | false",
      "common corner, through the face   | 0 0 0  2 2 -1  1 1 1      | true",
      "common corner, far edge touches   | 0 0 0  2 2 0  1 1 5       | true",
      "common corner, edge along edge    | 0 0 0  2 0 0  1 -3 3      | true",
      "common corner, fans overlap       | 0 0 0  3 1 0  1 3 0       | true",
      "common corner, fan within         | 0 0 0  1 1 0  1 2 0       | true",
      "common corner, fans side by side  | 0 0 0  0 4 1  -4 0 0      | false",
      "common edge, flat                 | 0 0 0  4 0 0  2 -3 0      | false",
      "common edge, bent                 | 4 0 0  0 0 0  2 3 1       | false",
      "common edge, standing up          | 4 0 0  0 0 0  0 0 3       | false",
      "common edge, folded               | 4 0 0  0 0 0  2 3 0       | true",
      "common edge, folded on the edge   | 4 0 0  0 0 0  2 2 0       | true",
      "the same                          | 4 0 0  0 4 0  0 0 0       | true",
      "the same, turned over             | 0 0 0  0 4 0  4 0 0       | true"})
  void improper_case_asExpected(String name, String other, boolean expected) {
    int[] p = new int[18];
    p[3] = 4;
    p[7] = 4;
    String[] n = other.trim().split("\\s+");
    for (int k = 0; k < 9; k++) {
      p[9 + k] = Integer.parseInt(n[k]);
    }
    assertEquals(expected, FacetContact.improper(p, 0, 1, 2, 3, 4, 5));
    assertEquals(expected, FacetContact.improper(p, 5, 3, 4, 1, 2, 0));
    assertEquals(expected, RationalContact.improper(p, 0, 1, 2, 3, 4, 5), "the second opinion");
  }
}
