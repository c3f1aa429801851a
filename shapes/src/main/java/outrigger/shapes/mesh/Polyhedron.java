package outrigger.shapes.mesh;

import java.util.List;

/**
 * A closed polyhedron with flat, many-cornered faces: what a leaf of an expression looks like to the kernel.
 *
 * @param xyz x, y, z of each vertex in grid units; equal ones only where rings of a profile touch
 * @param faces each face as loops of vertex numbers, seen from outside: the outer loop counter-clockwise first, then
 *     holes clockwise; all vertices of a face lie exactly in one plane
 */
record Polyhedron(int[] xyz, List<int[][]> faces) {}
