package rallywright.acceptance;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A bad network between phones and the server on this computer: a proxy for HTTP that loses,
 * delays, repeats and cuts off messages and answers, and lets later ones overtake. Which it does to
 * the next message follows from a seed. Only the messages of the sync are spoilt, not the page.
 */
final class FaultyWay implements AutoCloseable {

  private static final Pattern SYNC = Pattern.compile("^(?:GET|POST) /court/[^/ ]+/(events|state)");
  private static final Pattern LENGTH = Pattern.compile("(?im)^content-length: *(\\d+)");
  private static final int LONGEST_DELAY_MS = 60;
  private static final int MOST_OVERTAKING = 6;

  private final ServerSocket door;
  private final int server;
  private final Random random;
  private final ExecutorService threads = Executors.newCachedThreadPool();
  private final Deque<Late> late = new ArrayDeque<>();
  private final Map<Fault, AtomicLong> counts = new EnumMap<>(Fault.class);
  private final AtomicLong messages = new AtomicLong();
  private volatile boolean bad = true;

  /** What can happen to a message. */
  enum Fault {
    /** Nothing. */
    NONE("passed"),
    /** The message does not arrive. */
    LOST("message lost"),
    /** It arrives, the answer does not. */
    ANSWER_LOST("answer lost"),
    /** Message and answer take their time. */
    DELAYED("delayed"),
    /** It arrives twice. */
    REPEATED("arrived twice"),
    /** Only a part of it arrives. */
    CUT("message cut off"),
    /** Only a part of the answer arrives. */
    ANSWER_CUT("answer cut off"),
    /** It seems lost and arrives after later ones. */
    OVERTAKEN("arrived after later ones");

    private final String words;

    Fault(String words) {
      this.words = words;
    }

    /** In words. */
    String words() {
      return words;
    }
  }

  @SuppressWarnings("ArrayRecordComponent") // bytes on their way, never compared
  private record Late(byte[] request, AtomicLong left) {}

  /** A way to a server on this computer. */
  FaultyWay(int server, long seed) {
    this.server = server;
    this.random = new Random(seed);
    for (Fault fault : Fault.values()) {
      counts.put(fault, new AtomicLong());
    }
    try {
      door = new ServerSocket(0, 200, InetAddress.getLoopbackAddress());
    } catch (IOException problem) {
      throw new IllegalStateException(problem);
    }
    threads.execute(this::accept);
  }

  /** Its address. */
  String address() {
    return "http://127.0.0.1:" + door.getLocalPort();
  }

  /** How many messages with events came to it. */
  long messages() {
    return messages.get();
  }

  /** How often each happened, to messages with events and to looks. */
  Map<Fault, AtomicLong> counts() {
    return counts;
  }

  /** From now on the network is good; what was held back arrives first. */
  void heal() throws IOException {
    bad = false;
    deliverLate(true);
  }

  private void accept() {
    while (!door.isClosed()) {
      try {
        Socket phone = door.accept();
        threads.execute(() -> serve(phone));
      } catch (IOException closed) {
        return;
      }
    }
  }

  private void serve(Socket phone) {
    try (phone) {
      phone.setSoTimeout(30_000);
      byte[] request = request(phone.getInputStream());
      if (request.length > 0) {
        pass(request, phone.getOutputStream());
      }
    } catch (IOException gone) {
      // The phone or the server went away in the middle, which is one of the things that happen.
    }
  }

  private void pass(byte[] request, OutputStream phone) throws IOException {
    Matcher sync = SYNC.matcher(new String(request, StandardCharsets.ISO_8859_1));
    boolean isSync = sync.find();
    boolean events = isSync && sync.group(1).equals("events");
    if (events) {
      messages.incrementAndGet();
    }
    Fault fault = isSync && bad ? draw() : Fault.NONE;
    if (isSync) {
      counts.get(fault).incrementAndGet();
    }
    switch (fault) {
      case LOST -> {}
      case ANSWER_LOST -> ask(request);
      case DELAYED -> {
        rest();
        byte[] answer = ask(request);
        rest();
        phone.write(answer);
      }
      case REPEATED -> {
        ask(request);
        phone.write(ask(request));
      }
      case CUT -> ask(Arrays.copyOf(request, request.length - 1 - between(request.length / 2)));
      case ANSWER_CUT -> {
        byte[] answer = ask(request);
        phone.write(answer, 0, answer.length / 2);
      }
      case OVERTAKEN -> hold(request);
      default -> phone.write(ask(request));
    }
    deliverLate(false);
  }

  private synchronized Fault draw() {
    Fault[] all = Fault.values();
    return random.nextBoolean() ? Fault.NONE : all[1 + random.nextInt(all.length - 1)];
  }

  private synchronized int between(int bound) {
    return random.nextInt(Math.max(1, bound));
  }

  private synchronized void hold(byte[] request) {
    late.add(new Late(request, new AtomicLong(1 + random.nextInt(MOST_OVERTAKING))));
  }

  private void deliverLate(boolean all) throws IOException {
    Deque<Late> due = new ArrayDeque<>();
    synchronized (this) {
      for (Late each : late) {
        if (all || each.left().decrementAndGet() < 0) {
          due.add(each);
        }
      }
      late.removeAll(due);
    }
    for (Late each : due) {
      ask(each.request());
    }
  }

  private void rest() {
    try {
      Thread.sleep(between(LONGEST_DELAY_MS));
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  /** Sends a request, whole or not, and reads the answer to its end. */
  private byte[] ask(byte[] request) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server)) {
      socket.setSoTimeout(30_000);
      socket.getOutputStream().write(request);
      socket.shutdownOutput();
      return socket.getInputStream().readAllBytes();
    }
  }

  /** One request; the connection is told to end after it, so that one follows on no other. */
  private static byte[] request(InputStream in) throws IOException {
    ByteArrayOutputStream seen = new ByteArrayOutputStream();
    int matched = 0;
    while (matched < 4) {
      int next = in.read();
      if (next < 0) {
        return new byte[0];
      }
      seen.write(next);
      matched = next == "\r\n\r\n".charAt(matched) ? matched + 1 : next == '\r' ? 1 : 0;
    }
    String head = seen.toString(StandardCharsets.ISO_8859_1);
    Matcher length = LENGTH.matcher(head.toLowerCase(Locale.ROOT));
    byte[] body = length.find() ? in.readNBytes(Integer.parseInt(length.group(1))) : new byte[0];
    String closing =
        head.replaceAll("(?im)^(connection|upgrade|http2-settings):.*\r\n", "")
            .replaceFirst("\r\n", "\r\nConnection: close\r\n");
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    whole.write(closing.getBytes(StandardCharsets.ISO_8859_1));
    whole.write(body);
    return whole.toByteArray();
  }

  @Override
  public void close() throws IOException {
    door.close();
    threads.shutdownNow();
  }
}
