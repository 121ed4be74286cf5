package rallywright.acceptance;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;

/** Chromium without a window, in the two sizes that pages are made for. */
final class Browsers implements AutoCloseable {

  /** How Chromium is started here: it reaches nobody but this computer. */
  static final List<String> ARGUMENTS =
      List.of(
          "--no-sandbox",
          "--disable-gpu",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync");

  private static final double PATIENCE_MS = 90_000;

  private static final AtomicReference<Running> KEPT = new AtomicReference<>();

  private final Running running;
  private final boolean shared;
  private final List<BrowserContext> contexts = new ArrayList<>();

  /**
   * A browser with the thread that may talk to it.
   *
   * @param owner the thread that started it
   */
  private record Running(Thread owner, Playwright playwright, Browser browser) {

    static Running start() {
      Playwright playwright = Playwright.create();
      Browser browser =
          playwright
              .chromium()
              .launch(
                  new BrowserType.LaunchOptions()
                      .setExecutablePath(
                          Path.of(System.getProperty("chromium", "/usr/bin/chromium")))
                      .setHeadless(true)
                      .setArgs(ARGUMENTS));
      return new Running(Thread.currentThread(), playwright, browser);
    }
  }

  /**
   * One browser serves all tests of a thread, one after the other, each with fresh profiles;
   * another thread starts its own.
   */
  Browsers() {
    Running kept = KEPT.get();
    if (kept == null || !kept.browser().isConnected()) {
      kept = Running.start();
      KEPT.set(kept);
    }
    shared = kept.owner() == Thread.currentThread();
    running = shared ? kept : Running.start();
  }

  /** Ends the browser that serves all tests; a program that is no test runner needs it to end. */
  static void endKept() {
    Running kept = KEPT.getAndSet(null);
    if (kept != null) {
      kept.playwright().close();
    }
  }

  /** A fresh profile the size of a phone, with touch. */
  BrowserContext phone() {
    return fresh(phoneOptions());
  }

  /** A phone whose owner has agreed to trust the server's own certificate. */
  BrowserContext trustingPhone() {
    return fresh(phoneOptions().setIgnoreHTTPSErrors(true));
  }

  private static Browser.NewContextOptions phoneOptions() {
    return new Browser.NewContextOptions()
        .setViewportSize(390, 844)
        .setHasTouch(true)
        .setIsMobile(true)
        .setDeviceScaleFactor(2);
  }

  /** A fresh profile with options of its own. */
  BrowserContext with(Browser.NewContextOptions options) {
    return fresh(options);
  }

  /** A fresh profile the size of a laptop. */
  BrowserContext laptop() {
    return fresh(new Browser.NewContextOptions().setViewportSize(1366, 768));
  }

  /** Several browsers and programs share a small machine: waiting longer is no failure. */
  private BrowserContext fresh(Browser.NewContextOptions options) {
    BrowserContext context = running.browser().newContext(options);
    contexts.add(context);
    context.setDefaultTimeout(PATIENCE_MS);
    context.setDefaultNavigationTimeout(PATIENCE_MS);
    return context;
  }

  /** Does what leads to another page, or to the same anew, and waits for that page. */
  static void toNextPage(Page page, Runnable step) {
    page.evaluate("() => document.documentElement.setAttribute('data-left', '')");
    step.run();
    page.locator("html:not([data-left]) main")
        .waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.ATTACHED));
    page.waitForLoadState();
  }

  @Override
  public void close() {
    if (shared) {
      contexts.forEach(BrowserContext::close);
    } else {
      running.playwright().close();
    }
  }
}
