package rallywright.store;

/** The club's data. */
public final class ClubStore {

  private ClubStore() {}
}
