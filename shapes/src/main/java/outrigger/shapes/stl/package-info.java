/**
 * STL files: proven meshes out, anybody's facets in.
 *
 * <p>{@link outrigger.shapes.stl.StlWriter} takes only a {@link outrigger.shapes.check.CheckedMesh}, so that what is
 * written is what was proven, bit for bit. {@link outrigger.shapes.stl.StlReader} reads both encodings and says why it
 * refuses a file, and at which byte; {@link outrigger.shapes.stl.StlFile#toMesh()} brings the facets onto the grid, so
 * that they can be judged, and says what it had to round; {@link outrigger.shapes.stl.StlFile#toSolid()} makes a solid of
 * them if they are sound, for use in an expression.
 *
 * <p>STL has no standard. The layout is common practice: binary, an 80-byte header, a 32-bit count and 50 bytes a facet,
 * little-endian; ASCII, nested keywords. It carries no unit: millimetres are meant.
 */
package outrigger.shapes.stl;
