package outrigger.generator.clash;

/** What has a place on the truck. */
public enum Sort {
  /** A printed part. */
  PART("part"),
  /** A chassis rail. */
  RAIL("rail"),
  /** A thing carried, such as a battery. */
  ITEM("item"),
  /** Room the body keeps for itself, such as its interior tub. */
  KEEP_OUT("keep-out"),
  /** The head of a screw. */
  HEAD("screw head"),
  /** The shank of a screw with what it runs into. */
  SHANK("screw"),
  /** The straight way a tool needs to a head. */
  WAY("tool's way");

  private final String word;

  Sort(String word) {
    this.word = word;
  }

  /** In words. */
  public String word() {
    return word;
  }
}
