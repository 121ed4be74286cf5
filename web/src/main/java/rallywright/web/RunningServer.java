package rallywright.web;

import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;
import rallywright.web.signin.StartKey;

/** A started server: where it listens and how to stop it. */
public final class RunningServer implements AutoCloseable {

  private final ConfigurableApplicationContext context;
  private final ServerSettings settings;

  RunningServer(ConfigurableApplicationContext context, ServerSettings settings) {
    this.context = context;
    this.settings = settings;
  }

  /** The address without a key, for example {@code http://127.0.0.1:8817}. */
  public String address() {
    return settings.reach().localAddress(port());
  }

  /** The address that signs the coach in; its key works once. */
  public String signInAddress() {
    return address() + "/sign-in#key=" + context.getBean(StartKey.class).reveal();
  }

  /** The port it listens on. */
  public int port() {
    var web = ((WebServerApplicationContext) context).getWebServer();
    return web == null ? settings.port() : web.getPort();
  }

  @Override
  public void close() {
    context.close();
  }
}
