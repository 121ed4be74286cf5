package rallywright.web.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ErrorReportValve;
import org.jspecify.annotations.Nullable;

/**
 * The answer to a request that is turned away before any page sees it, such as an address that is
 * no address. The server makes it by its name, so that it must be public.
 */
public final class BareErrors extends ErrorReportValve {

  private static final int FIRST_ERROR = 400;

  @Override
  protected void report(Request request, Response response, @Nullable Throwable problem) {
    int status = response.getStatus();
    if (status < FIRST_ERROR || response.getContentWritten() > 0 || !response.setErrorReported()) {
      return;
    }
    try {
      response.setContentType("text/plain;charset=UTF-8");
      response.setHeader("X-Content-Type-Options", "nosniff");
      byte[] words = (ErrorWords.of(status, "").sentence() + "\n").getBytes(StandardCharsets.UTF_8);
      response.getOutputStream().write(words);
      response.finishResponse();
    } catch (IOException gone) {
      // Nobody is there any more to read it.
    }
  }
}
