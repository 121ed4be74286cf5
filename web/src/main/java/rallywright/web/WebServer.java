package rallywright.web;

import java.net.BindException;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.Banner;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.web.server.PortInUseException;
import org.springframework.context.support.GenericApplicationContext;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;
import rallywright.web.signin.CoachPassword;

/** Starts the web server. */
public final class WebServer {

  private WebServer() {}

  /**
   * Opens the club, starts the server and returns when it answers.
   *
   * @param settings how to start it
   * @return the running server
   * @throws StartRefused if it would open to the network without a password, or cannot listen
   */
  public static RunningServer start(ServerSettings settings) {
    ClubStore store = ClubStore.open(StoreAddress.file(settings.data()));
    try {
      return start(settings, store);
    } catch (RuntimeException failed) {
      store.close();
      throw refusal(settings, failed);
    }
  }

  /**
   * Sets the coach's password without starting the server.
   *
   * @param settings whose club
   * @param password the new password
   * @throws IllegalArgumentException if the password is too short or too long
   */
  public static void setPassword(ServerSettings settings, String password) {
    try (ClubStore store = ClubStore.open(StoreAddress.file(settings.data()))) {
      new CoachPassword(store).set(password);
    }
  }

  private static RunningServer start(ServerSettings settings, ClubStore store) {
    if (settings.reach().opensToNetwork() && !new CoachPassword(store).isSet()) {
      throw new StartRefused(
          "The host "
              + settings.host()
              + " opens the club to the network, which needs a password first. Set one with "
              + passwordCommand(settings)
              + ", then start again.");
    }
    var context =
        new SpringApplicationBuilder(WebWiring.class)
            .web(WebApplicationType.SERVLET)
            .bannerMode(Banner.Mode.OFF)
            .logStartupInfo(false)
            .properties(properties(settings))
            .initializers(
                (GenericApplicationContext fresh) -> {
                  fresh.registerBean(ServerSettings.class, () -> settings);
                  fresh.registerBean(ClubStore.class, () -> store);
                })
            .run();
    return new RunningServer(context, settings);
  }

  /** Only the club's own command sets a password; it does so for any folder. */
  private static String passwordCommand(ServerSettings settings) {
    return settings.mode() == ServerSettings.Mode.DEMO
        ? "rallywright serve --set-password --data " + settings.data()
        : "--set-password";
  }

  private static Map<String, Object> properties(ServerSettings settings) {
    Map<String, Object> all = new HashMap<>();
    all.put("server.address", settings.host());
    all.put("server.port", settings.port());
    all.put("server.shutdown", "graceful");
    all.put("spring.lifecycle.timeout-per-shutdown-phase", "3s");
    all.put("server.servlet.session.cookie.name", "rallywright");
    all.put("server.servlet.session.cookie.same-site", "strict");
    all.put("server.servlet.session.cookie.http-only", "true");
    all.put("server.servlet.session.tracking-modes", "cookie");
    all.put("spring.servlet.multipart.max-file-size", "2MB");
    all.put("spring.servlet.multipart.max-request-size", "3MB");
    all.put("spring.web.resources.cache.cachecontrol.no-cache", "true");
    all.put("spring.main.lazy-initialization", "false");
    all.put("spring.jmx.enabled", "false");
    all.put("logging.level.root", "warn");
    all.put("logging.level.org.springframework.boot.diagnostics", "off");
    all.put("logging.level.org.springframework.boot.web", "error");
    Reach.Tls tls = settings.reach().tls();
    if (tls != null) {
      String bundle = "spring.ssl.bundle.pem.rallywright.keystore.";
      all.put(bundle + "certificate", tls.certificate().toAbsolutePath().toUri().toString());
      all.put(bundle + "private-key", tls.key().toAbsolutePath().toUri().toString());
      all.put("server.ssl.bundle", "rallywright");
      all.put("server.servlet.session.cookie.secure", "true");
      // A pair that does not fit is answered in one sentence by refusal().
      all.put("logging.level.org.springframework.boot.SpringApplication", "off");
    }
    return all;
  }

  private static RuntimeException refusal(ServerSettings settings, RuntimeException failed) {
    if (cause(failed, PortInUseException.class) != null) {
      return new StartRefused(
          "The port "
              + settings.port()
              + " is taken by another program. Stop that one, or choose another with --port; 0"
              + " takes a free one.",
          failed);
    }
    BindException bind = cause(failed, BindException.class);
    if (bind != null) {
      return new StartRefused(
          "The host "
              + settings.host()
              + " with port "
              + settings.port()
              + " cannot be listened on ("
              + Objects.requireNonNullElse(bind.getMessage(), "no reason given")
              + "). Maybe 127.0.0.1, or 0.0.0.0 for every address of this computer.",
          failed);
    }
    Reach.Tls tls = settings.reach().tls();
    if (tls != null && !(failed instanceof StartRefused)) {
      return new StartRefused(
          ("The certificate %s and the key %s could not be used (%s). Maybe they do not belong"
                  + " together.")
              .formatted(tls.certificate(), tls.key(), rootOf(failed).getMessage()),
          failed);
    }
    return failed;
  }

  private static Throwable rootOf(Throwable failed) {
    Throwable root = failed;
    while (root.getCause() != null) {
      root = root.getCause();
    }
    return root;
  }

  private static <T> @Nullable T cause(Throwable failed, Class<T> kind) {
    for (Throwable at = failed; at != null; at = at.getCause()) {
      if (kind.isInstance(at)) {
        return kind.cast(at);
      }
    }
    return null;
  }
}
