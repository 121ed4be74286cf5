package rallywright.engine.session;

/** Where a running session stands; filled in with the on-court work. */
public final class SessionProgress {

  private SessionProgress() {}
}
