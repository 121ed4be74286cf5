package rallywright.engine.skill;

import java.util.List;

/**
 * All evidence of a group that has one predictor and one chance, in flat arrays in the order of the
 * first latent: most of what a club knows, and most of the time of a fit.
 */
final class Binomials {
  private final int[] starts;
  private final int[] latents;
  private final double[] weights;
  private final double[] offsets;
  private final double[] hits;
  private final double[] misses;

  /** Where the products of each two weights of a term stand in the matrix; empty until needed. */
  private int[] places = {};

  /** Gathers the terms, each with a {@link BinomialLikelihood}. */
  Binomials(List<Term> terms) {
    List<Term> ordered = ordered(terms);
    int count = ordered.size();
    starts = new int[count + 1];
    offsets = new double[count];
    hits = new double[count];
    misses = new double[count];
    for (int i = 0; i < count; i++) {
      Term term = ordered.get(i);
      BinomialLikelihood likelihood = (BinomialLikelihood) term.likelihood();
      starts[i + 1] = starts[i] + term.latents().length;
      offsets[i] = term.offset(0);
      hits[i] = likelihood.hits();
      misses[i] = likelihood.misses();
    }
    latents = new int[starts[count]];
    weights = new double[starts[count]];
    for (int i = 0; i < count; i++) {
      int length = starts[i + 1] - starts[i];
      System.arraycopy(ordered.get(i).latents(), 0, latents, starts[i], length);
      System.arraycopy(ordered.get(i).weights(0), 0, weights, starts[i], length);
    }
  }

  /** By first latent, counted out: a sort would compare each with many. */
  private static List<Term> ordered(List<Term> terms) {
    int last = terms.stream().mapToInt(Term::firstLatent).max().orElse(0);
    int[] places = new int[last + 2];
    for (Term term : terms) {
      places[term.firstLatent() + 1]++;
    }
    for (int latent = 0; latent < last; latent++) {
      places[latent + 1] += places[latent];
    }
    Term[] ordered = new Term[terms.size()];
    for (Term term : terms) {
      ordered[places[term.firstLatent()]++] = term;
    }
    return List.of(ordered);
  }

  int count() {
    return offsets.length;
  }

  /** The first term whose first latent is this one or a later one; one without any counts as 0. */
  int from(int latent) {
    int low = 0;
    int high = count();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (firstLatent(middle) < latent) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private int firstLatent(int term) {
    return starts[term] < starts[term + 1] ? latents[starts[term]] : 0;
  }

  private double eta(int term, double[] x) {
    double eta = offsets[term];
    for (int j = starts[term]; j < starts[term + 1]; j++) {
      eta += weights[j] * x[latents[j]];
    }
    return eta;
  }

  /**
   * The log-likelihood at x; its gradient is added.
   *
   * @param bends receives minus the second derivative of each term by its predictor
   */
  double at(double[] x, double[] gradient, double[] bends) {
    double value = 0;
    for (int i = 0; i < offsets.length; i++) {
      double eta = eta(i, x);
      double size = Math.abs(eta);
      double odds = Math.exp(-size);
      double likely = 1 / (1 + odds);
      double unlikely = odds * likely;
      double balls = hits[i] + misses[i];
      value -= balls * Math.log(1 + odds) + size * (eta >= 0 ? misses[i] : hits[i]);
      bends[i] = balls * likely * unlikely;
      double slope = hits[i] - balls * (eta >= 0 ? likely : unlikely);
      for (int j = starts[i]; j < starts[i + 1]; j++) {
        gradient[latents[j]] += slope * weights[j];
      }
    }
    return value;
  }

  /** Finds once where the terms stand in a matrix; an update needs only few and does without. */
  synchronized void findPlaces(BlockPattern pattern) {
    if (places.length > 0) {
      return;
    }
    int[] found = new int[pairsUntil(count())];
    int next = 0;
    for (int i = 0; i < count(); i++) {
      for (int j = starts[i]; j < starts[i + 1]; j++) {
        for (int k = j; k < starts[i + 1]; k++) {
          found[next++] = pattern.place(latents[j], latents[k]);
        }
      }
    }
    places = found;
  }

  private int pairsUntil(int term) {
    int pairs = 0;
    for (int i = 0; i < term; i++) {
      int length = starts[i + 1] - starts[i];
      pairs += length * (length + 1) / 2;
    }
    return pairs;
  }

  /** Adds minus the Hessian of the terms whose first latent lies in a range. */
  void addPrecision(double[] bends, BlockMatrix matrix, int from, int until) {
    int end = from(until);
    int next = places.length == 0 ? 0 : pairsUntil(from(from));
    for (int i = from(from); i < end; i++) {
      for (int j = starts[i]; j < starts[i + 1]; j++) {
        double scaled = bends[i] * weights[j];
        for (int k = j; k < starts[i + 1]; k++) {
          if (places.length == 0) {
            matrix.add(latents[j], latents[k], scaled * weights[k]);
          } else {
            matrix.addAt(places[next++], scaled * weights[k]);
          }
        }
      }
    }
  }

  /** Adds minus the Hessian times a vector. */
  void addProduct(double[] bends, double[] vector, double[] product) {
    for (int i = 0; i < offsets.length; i++) {
      double along = bends[i] * (eta(i, vector) - offsets[i]);
      for (int j = starts[i]; j < starts[i + 1]; j++) {
        product[latents[j]] += along * weights[j];
      }
    }
  }

  /**
   * Adds the pull of the skewness of one term: half its third derivative times the variance of its
   * predictor.
   */
  void addPull(int term, SelectedInverse.Covariances covariances, double[] mode, double[] pull) {
    double variance = 0;
    for (int j = starts[term]; j < starts[term + 1]; j++) {
      double own = weights[j] * covariances.of(latents[j], latents[j]);
      for (int k = j + 1; k < starts[term + 1]; k++) {
        own += 2 * weights[k] * covariances.of(latents[j], latents[k]);
      }
      variance += weights[j] * own;
    }
    double chance = Logistic.chance(eta(term, mode));
    double third = -(hits[term] + misses[term]) * chance * (1 - chance) * (1 - 2 * chance);
    for (int j = starts[term]; j < starts[term + 1]; j++) {
      pull[latents[j]] += third / 2 * variance * weights[j];
    }
  }
}
