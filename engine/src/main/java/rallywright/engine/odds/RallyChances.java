package rallywright.engine.odds;

import java.util.List;
import rallywright.engine.quantity.Probability;
import rallywright.engine.score.BySide;
import rallywright.engine.score.Partner;
import rallywright.engine.score.Serve;
import rallywright.engine.score.Side;

/**
 * The chances of a single rally, which stay the same from rally to rally.
 *
 * <p>Three ways to give them: one number whoever serves, one number for each serving side, or one
 * for each named server of two pairs.
 */
public sealed interface RallyChances {

  /**
   * The chance that the serving side wins the rally.
   *
   * @param serve who serves
   * @return the chance
   */
  Probability serverWins(Serve serve);

  /**
   * Which of the given numbers decides a rally.
   *
   * @param serve who serves
   * @return the place of the number in {@link #values()}, from 0
   */
  int indexOf(Serve serve);

  /**
   * How the chance of the server changes with its number: 1 where it is that number, -1 where it is
   * the complement.
   *
   * @param serve who serves
   * @return 1 or -1
   */
  default int direction(Serve serve) {
    return 1;
  }

  /**
   * The same chances with the names of two partners exchanged.
   *
   * @param side the pair
   * @return the chances; unchanged where servers have no names
   */
  default RallyChances withPartnersExchanged(Side side) {
    return this;
  }

  /**
   * The given numbers.
   *
   * @return one, two or four chances
   */
  List<Probability> values();

  /**
   * One chance whoever serves.
   *
   * @param aWins the chance that side A wins a rally
   * @return the chances
   */
  static RallyChances ofRally(Probability aWins) {
    return new AnyServer(aWins);
  }

  /**
   * One chance for each serving side.
   *
   * @param serveA the chance that A's side wins a rally that A serves
   * @param serveB the chance that B's side wins a rally that B serves
   * @return the chances
   */
  static RallyChances ofServe(Probability serveA, Probability serveB) {
    return new ServingSide(BySide.of(serveA, serveB));
  }

  /**
   * One chance for each named server.
   *
   * @param a the chances of A's side on the serve of each of its players
   * @param b the chances of B's side on the serve of each of its players
   * @return the chances
   */
  static RallyChances ofServers(PairChances a, PairChances b) {
    return new NamedServers(BySide.of(a, b));
  }

  /**
   * The chances of a pair on serve.
   *
   * @param rightAtEven while the player serves who started the game on the right
   * @param leftAtEven while the partner serves
   */
  record PairChances(Probability rightAtEven, Probability leftAtEven) {

    /**
     * The chance on one player's serve.
     *
     * @param server the player
     * @return the pair's chance to win the rally
     */
    public Probability of(Partner server) {
      return server == Partner.RIGHT_AT_EVEN ? rightAtEven : leftAtEven;
    }
  }

  /**
   * One chance whoever serves; see {@link #ofRally}.
   *
   * @param aWins the chance that side A wins a rally
   */
  record AnyServer(Probability aWins) implements RallyChances {
    @Override
    public Probability serverWins(Serve serve) {
      return serve.side() == Side.A ? aWins : aWins.complement();
    }

    @Override
    public int indexOf(Serve serve) {
      return 0;
    }

    @Override
    public int direction(Serve serve) {
      return serve.side() == Side.A ? 1 : -1;
    }

    @Override
    public List<Probability> values() {
      return List.of(aWins);
    }
  }

  /**
   * One chance for each serving side; see {@link #ofServe}.
   *
   * @param serverWins the chance that the serving side wins the rally, for each side
   */
  record ServingSide(BySide<Probability> serverWins) implements RallyChances {
    @Override
    public Probability serverWins(Serve serve) {
      return serverWins.of(serve.side());
    }

    @Override
    public int indexOf(Serve serve) {
      return serve.side() == Side.A ? 0 : 1;
    }

    @Override
    public List<Probability> values() {
      return List.of(serverWins.a(), serverWins.b());
    }
  }

  /**
   * One chance for each named server; see {@link #ofServers}.
   *
   * @param pairs the chances of each pair on serve
   */
  record NamedServers(BySide<PairChances> pairs) implements RallyChances {
    @Override
    public Probability serverWins(Serve serve) {
      return pairs.of(serve.side()).of(serve.server());
    }

    @Override
    public int indexOf(Serve serve) {
      int firstOfPair = serve.side() == Side.A ? 0 : 2;
      return serve.server() == Partner.RIGHT_AT_EVEN ? firstOfPair : firstOfPair + 1;
    }

    @Override
    public RallyChances withPartnersExchanged(Side side) {
      PairChances pair = pairs.of(side);
      PairChances exchanged = new PairChances(pair.leftAtEven(), pair.rightAtEven());
      return new NamedServers(pairs.with(side, exchanged));
    }

    @Override
    public List<Probability> values() {
      return List.of(
          pairs.a().rightAtEven(),
          pairs.a().leftAtEven(),
          pairs.b().rightAtEven(),
          pairs.b().leftAtEven());
    }
  }
}
