package rallywright.catalogue;

/** The drills that ship with the program. */
public final class Catalogue {

  private Catalogue() {}
}
