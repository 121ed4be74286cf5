package rallywright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rallywright.engine.score.Side;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.EventId;
import rallywright.engine.session.SessionId;

class EventLogIT {

  @ParameterizedTest
  @EnumSource
  void events_sentTwice_countOnce(TestDatabase database) {
    try (ClubStore store = ClubStore.open(database.fresh())) {
      Examples.fill(store);
      var again = store.events().append(Examples.oneOfEach());
      assertThat(again).isEqualTo(new EventLog.Appended(0, List.of()));
      assertThat(store.events().of(Examples.MONDAY)).isEqualTo(Examples.oneOfEach());
    }
  }

  @ParameterizedTest
  @EnumSource
  void event_sentAgainWithOtherContent_staysAsFirstStoredAndIsReported(TestDatabase database) {
    try (ClubStore store = ClubStore.open(database.fresh())) {
      Examples.fill(store);
      CourtEvent other = Examples.rally("e-03", Examples.FIRST, Side.B);
      CourtEvent fresh = Examples.rally("e-20", Examples.FIRST, Side.B);
      var result = store.events().append(List.of(other, fresh));
      assertThat(result).isEqualTo(new EventLog.Appended(1, List.of(new EventId("e-03"))));
      assertThat(store.events().of(Examples.MONDAY)).contains(fresh).doesNotContain(other);
    }
  }

  @ParameterizedTest
  @EnumSource
  void events_ofAnUnknownSession_areRefusedAndNoneIsAdded(TestDatabase database) {
    try (ClubStore store = ClubStore.open(database.fresh())) {
      Examples.fill(store);
      var stamp =
          new CourtEvent.Stamp(new EventId("e-30"), new SessionId("s-nowhere"), 1, "phone 2");
      assertThatThrownBy(
              () ->
                  store
                      .events()
                      .append(
                          List.of(
                              Examples.rally("e-29", Examples.FIRST, Side.A),
                              new CourtEvent.SessionEnded(stamp))))
          .isInstanceOf(StoreProblem.class)
          .hasMessageContaining("s-nowhere");
      assertThat(store.events().all()).hasSize(Examples.oneOfEach().size());
    }
  }

  @ParameterizedTest
  @EnumSource
  void eventsAfterAPlace_areTheLaterOnes(TestDatabase database) {
    try (ClubStore store = ClubStore.open(database.fresh())) {
      Examples.fill(store);
      List<StoredEvent> all = store.events().after(Examples.MONDAY, 0);
      long place = all.get(4).arrival();
      assertThat(store.events().after(Examples.MONDAY, place))
          .isEqualTo(all.subList(5, all.size()));
    }
  }

  /** A law: however batches repeat and overlap, each id is there once, as first sent. */
  @Property(tries = 40)
  void batchesInAnyOverlap_keepEachIdOnceAsFirstSent(
      @ForAll @Size(max = 12) List<@Size(max = 8) List<@IntRange(max = 99) Integer>> batches) {
    for (TestDatabase database : TestDatabase.values()) {
      keepsEachIdOnce(OpenClubs.of(database), batches);
    }
  }

  /** A number stands for an id (its tens and units, modulo 20) and a content (even or odd). */
  private static void keepsEachIdOnce(ClubStore store, List<List<Integer>> batches) {
    SessionId session = OpenClubs.freshSession(store);
    Map<EventId, CourtEvent> expected = new LinkedHashMap<>();
    for (List<Integer> batch : batches) {
      List<CourtEvent> events = new ArrayList<>();
      int fresh = 0;
      for (int number : batch) {
        CourtEvent event = event(session, number);
        events.add(event);
        if (expected.putIfAbsent(event.stamp().id(), event) == null) {
          fresh++;
        }
      }
      assertThat(store.events().append(events).added()).isEqualTo(fresh);
    }
    assertThat(store.events().of(session)).isEqualTo(List.copyOf(expected.values()));
  }

  private static CourtEvent event(SessionId session, int number) {
    String id = session + "-" + number % 20;
    Side winner = number / 20 % 2 == 0 ? Side.A : Side.B;
    return new CourtEvent.FirstServerNamed(
        new CourtEvent.Stamp(new EventId(id), session, 7, ""), Examples.FIRST, winner);
  }
}
