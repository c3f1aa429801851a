package outrigger.shapes.stl;

/** What an STL file holds. Pending: facets, encoding, header text, and conversion to a Mesh. */
public final class StlFile {}
