package rallywright.web.weather;

import org.springframework.stereotype.Component;
import rallywright.engine.session.SessionId;
import rallywright.store.ClubStore;

/** Keeps the weather that is expected for a session. */
@Component
public final class WeatherBook {

  private static final String NAME = "weather.expected.";

  private final ClubStore store;

  WeatherBook(ClubStore store) {
    this.store = store;
  }

  /** What is expected; unknown where nothing was said. */
  public ExpectedWeather of(SessionId session) {
    return store
        .settings()
        .get(NAME + session)
        .map(ExpectedWeather::read)
        .orElse(ExpectedWeather.UNKNOWN);
  }

  /** Keeps what is expected in place of what was. */
  public void keep(SessionId session, ExpectedWeather expected) {
    store.settings().put(NAME + session, expected.written());
  }
}
