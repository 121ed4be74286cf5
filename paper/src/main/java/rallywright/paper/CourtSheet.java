package rallywright.paper;

/** The printed page of a session. */
public final class CourtSheet {

  private CourtSheet() {}
}
