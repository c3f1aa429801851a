package outrigger.shapes.mesh.leaf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A polyhedron as a key: equal where two have the same faces at the same places, whatever the order of their vertices and
 * faces and wherever their loops begin.
 *
 * <p>Two that are the same are found so unless different vertices lie in one place, as where rings touch; then only if they
 * are given alike.
 */
public final class SamePlace {
  private final Polyhedron polyhedron;
  private final int hash;

  /** Of a polyhedron as it is placed. */
  public SamePlace(Polyhedron polyhedron) {
    this.polyhedron = polyhedron;
    int[] xyz = polyhedron.xyz();
    long sum = polyhedron.faces().size();
    for (int v = 0; v < xyz.length; v += 3) {
      // 2^64 over the golden ratio; any odd number of mixed bits would do
      long mixed = ((xyz[v] * 31L + xyz[v + 1]) * 31L + xyz[v + 2]) * 0x9E3779B97F4A7C15L;
      sum += mixed ^ mixed >>> 29;
    }
    hash = Long.hashCode(sum);
  }

  @Override
  public int hashCode() {
    return hash;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SamePlace same && hash == same.hash
        && (isGivenLike(same.polyhedron) || isLike(same.polyhedron));
  }

  private boolean isGivenLike(Polyhedron other) {
    List<int[][]> mine = polyhedron.faces();
    List<int[][]> others = other.faces();
    boolean alike = Arrays.equals(polyhedron.xyz(), other.xyz()) && mine.size() == others.size();
    for (int f = 0; alike && f < mine.size(); f++) {
      alike = Arrays.deepEquals(mine.get(f), others.get(f));
    }
    return alike;
  }

  private boolean isLike(Polyhedron other) {
    if (polyhedron.xyz().length != other.xyz().length || polyhedron.faces().size() != other.faces().size()) {
      return false;
    }
    Map<List<Integer>, Integer> places = new HashMap<>();
    int[] mine = numbers(polyhedron, places);
    int count = places.size();
    int[] others = numbers(other, places);
    return count == mine.length && places.size() == count && loops(polyhedron, mine).equals(loops(other, others));
  }

  /** Of each vertex the number of its place. */
  private static int[] numbers(Polyhedron polyhedron, Map<List<Integer>, Integer> places) {
    int[] xyz = polyhedron.xyz();
    int[] numbers = new int[xyz.length / 3];
    for (int v = 0; v < numbers.length; v++) {
      List<Integer> place = List.of(xyz[3 * v], xyz[3 * v + 1], xyz[3 * v + 2]);
      numbers[v] = places.computeIfAbsent(place, p -> places.size());
    }
    return numbers;
  }

  /** The loops of each face from their least number on, in the order of these. */
  private static Set<List<List<Integer>>> loops(Polyhedron polyhedron, int[] numbers) {
    Set<List<List<Integer>>> faces = new HashSet<>();
    for (int[][] face : polyhedron.faces()) {
      List<List<Integer>> loops = new ArrayList<>();
      for (int[] loop : face) {
        loops.add(fromLeast(loop, numbers));
      }
      loops.sort(Comparator.comparing(loop -> loop.get(0)));
      faces.add(loops);
    }
    return faces;
  }

  private static List<Integer> fromLeast(int[] loop, int[] numbers) {
    int start = 0;
    for (int i = 1; i < loop.length; i++) {
      start = numbers[loop[i]] < numbers[loop[start]] ? i : start;
    }
    List<Integer> turned = new ArrayList<>();
    for (int i = 0; i < loop.length; i++) {
      turned.add(numbers[loop[(start + i) % loop.length]]);
    }
    return turned;
  }
}
