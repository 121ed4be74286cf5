package rallywright.web.oncourt;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import rallywright.engine.session.SessionId;

class ChangeTrailTest {

  private static final SessionId HERE = new SessionId("here");
  private static final SessionId THERE = new SessionId("there");

  private final ChangeTrail trail = new ChangeTrail();

  @Test
  void revisions_thatAllAddedEntries_nameTheirSessions() {
    trail.added(8, HERE);
    trail.added(10, HERE);
    trail.added(9, THERE);
    assertThat(trail.addedBetween(7, 10)).contains(Set.of(HERE, THERE));
    assertThat(trail.addedBetween(8, 9)).contains(Set.of(THERE));
    assertThat(trail.addedBetween(10, 10)).contains(Set.of());
  }

  @Test
  void revision_thatIsNotOnTheTrail_mayHaveChangedAnything() {
    trail.added(8, HERE);
    trail.added(10, HERE);
    assertThat(trail.addedBetween(7, 10)).isEmpty();
    assertThat(trail.addedBetween(10, 11)).isEmpty();
    assertThat(trail.addedBetween(9, 8)).isEmpty();
  }

  @Test
  void trail_forgetsWhatIsLongAgo() {
    for (long revision = 1; revision <= 5000; revision++) {
      trail.added(revision, HERE);
    }
    assertThat(trail.addedBetween(0, 5000)).isEmpty();
    assertThat(trail.addedBetween(500, 5000)).isEmpty();
    assertThat(trail.addedBetween(4000, 5000)).contains(Set.of(HERE));
  }
}
