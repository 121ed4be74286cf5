package rallywright.engine.odds;

import java.util.ArrayList;
import java.util.List;
import rallywright.engine.score.Partner;
import rallywright.engine.score.Scoring;
import rallywright.engine.score.Serve;
import rallywright.engine.score.ServerNumber;
import rallywright.engine.score.Side;

/**
 * The servers that have to be told apart at a score: two, four (first and second server) or, where
 * each player has a chance of one's own, eight.
 */
enum ServeOrder {
  /** One server a side. */
  ONE_SERVER(1),
  /** First and second server of each side, whoever they are. */
  TWO_SERVERS(2),
  /** First and second server of each side, and which player serves. */
  TWO_NAMED_SERVERS(4);

  private final int servesPerSide;

  ServeOrder(int servesPerSide) {
    this.servesPerSide = servesPerSide;
  }

  static ServeOrder of(Scoring scoring, RallyChances chances) {
    boolean named = chances instanceof RallyChances.NamedServers;
    if (named && !scoring.hasTwoServers()) {
      throw new IllegalArgumentException(
          "A chance for each named server (%s) must go with two servers a side. Maybe one chance a"
                  .formatted(scoring.label())
              + " side was meant.");
    }
    if (!scoring.hasTwoServers()) {
      return ONE_SERVER;
    }
    return named ? TWO_NAMED_SERVERS : TWO_SERVERS;
  }

  /** All servers that are told apart, in the order of their index. */
  List<Serve> serves() {
    List<Serve> serves = new ArrayList<>();
    for (Side side : Side.values()) {
      for (ServerNumber number : ServerNumber.values()) {
        for (Partner partner : Partner.values()) {
          Serve serve = new Serve(side, number, partner);
          if (indexOf(serve) == serves.size()) {
            serves.add(serve);
          }
        }
      }
    }
    return List.copyOf(serves);
  }

  int indexOf(Serve serve) {
    int side = serve.side() == Side.A ? 0 : servesPerSide;
    int number = serve.number() == ServerNumber.FIRST ? 0 : servesPerSide / 2;
    boolean partner = this == TWO_NAMED_SERVERS && serve.server() == Partner.LEFT_AT_EVEN;
    return side + number + (partner ? 1 : 0);
  }

  /** How many points a tie-break must step back so that every server is met again. */
  int pointsBack() {
    return this == TWO_NAMED_SERVERS ? 2 : 1;
  }

  /**
   * Who serves after the serving side has lost a rally.
   *
   * @param serve who served
   * @param receiverPoints the points of the other side after the rally
   */
  Serve afterLostRally(Serve serve, int receiverPoints) {
    if (this != ONE_SERVER && serve.number() == ServerNumber.FIRST) {
      return new Serve(serve.side(), ServerNumber.SECOND, serve.server().other());
    }
    Partner right = Partner.onRightAt(receiverPoints);
    return new Serve(serve.side().opponent(), ServerNumber.FIRST, right);
  }
}
