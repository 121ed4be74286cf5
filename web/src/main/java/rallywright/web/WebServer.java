package rallywright.web;

import java.util.Map;
import org.springframework.boot.Banner;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.support.GenericApplicationContext;

/** Starts the web server. */
public final class WebServer {

  private WebServer() {}

  /**
   * Starts the server and returns when it answers.
   *
   * @param settings how to start it
   * @return the running server
   */
  public static RunningServer start(ServerSettings settings) {
    var context =
        new SpringApplicationBuilder(WebWiring.class)
            .web(WebApplicationType.SERVLET)
            .bannerMode(Banner.Mode.OFF)
            .logStartupInfo(false)
            .properties(properties(settings))
            .initializers(
                (GenericApplicationContext fresh) ->
                    fresh.registerBean(ServerSettings.class, () -> settings))
            .run();
    return new RunningServer(context, settings);
  }

  private static Map<String, Object> properties(ServerSettings settings) {
    return Map.of(
        "server.address", settings.host(),
        "server.port", settings.port(),
        "server.shutdown", "graceful",
        "server.servlet.session.cookie.name", "rallywright",
        "server.servlet.session.cookie.same-site", "strict",
        "server.servlet.session.cookie.http-only", "true",
        "spring.main.lazy-initialization", "false",
        "spring.jmx.enabled", "false",
        "logging.level.root", "warn");
  }
}
