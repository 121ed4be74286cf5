package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Evidence that spans groups, such as a game with a guest. The mode takes it exactly; for the
 * spreads each group takes what lies in the other ones as a normal variable of its own.
 */
final class CrossTerm {
  private final int[] parts;
  private final int[] latents;
  private final Term term;
  private final List<Cut> cuts = new ArrayList<>();

  /**
   * The rows of the evidence cut to one group. The border's share goes with the first.
   *
   * @param part the group
   * @param term the rows over the latents of that group and of the border
   */
  record Cut(int part, Term term) {}

  /**
   * Gathers the evidence.
   *
   * @param rows for each predictor the rows by group, over the latents of the group and the border
   * @param own for each group how many latents are its own
   */
  CrossTerm(Likelihood likelihood, List<Map<Integer, SparseRow>> rows, int[] own) {
    Map<Address, Integer> places = new LinkedHashMap<>();
    SparseRow[] joined = new SparseRow[rows.size()];
    for (int i = 0; i < joined.length; i++) {
      joined[i] = joined(rows.get(i), own, places);
    }
    parts = places.keySet().stream().mapToInt(Address::part).toArray();
    latents = places.keySet().stream().mapToInt(Address::latent).toArray();
    term = new Term(likelihood, joined);
    for (int part : rows.get(0).keySet()) {
      boolean first = cuts.isEmpty();
      cuts.add(new Cut(part, new Term(likelihood, cut(rows, part, own, first))));
    }
  }

  /** A latent of a group, or of the border under group −1. */
  private record Address(int part, int latent) {}

  private static SparseRow joined(
      Map<Integer, SparseRow> byPart, int[] own, Map<Address, Integer> places) {
    SparseRow joined = new SparseRow();
    byPart.forEach(
        (part, row) -> {
          joined.plusOffset(row.offset());
          for (int latent : row.latents()) {
            Address address =
                latent < own[part]
                    ? new Address(part, latent)
                    : new Address(-1, latent - own[part]);
            int place = places.computeIfAbsent(address, each -> places.size());
            joined.plus(place, row.weight(latent));
          }
        });
    return joined;
  }

  private static SparseRow[] cut(
      List<Map<Integer, SparseRow>> rows, int part, int[] own, boolean withBorder) {
    SparseRow[] cut = new SparseRow[rows.size()];
    for (int i = 0; i < cut.length; i++) {
      SparseRow mine = new SparseRow();
      rows.get(i)
          .forEach(
              (from, row) -> {
                for (int latent : row.latents()) {
                  boolean shared = latent >= own[from];
                  if (shared && withBorder) {
                    mine.plus(own[part] + latent - own[from], row.weight(latent));
                  } else if (!shared && from == part) {
                    mine.plus(latent, row.weight(latent));
                  }
                }
              });
      cut[i] = mine;
    }
    return cut;
  }

  List<Cut> cuts() {
    return cuts;
  }

  Likelihood likelihood() {
    return term.likelihood();
  }

  Likelihood.Curve at(Point x) {
    return term.at(gather(x));
  }

  double eta(int predictor, Point x) {
    return term.eta(predictor, gather(x));
  }

  private double[] gather(Point x) {
    double[] values = new double[parts.length];
    for (int i = 0; i < values.length; i++) {
      double[] from = parts[i] < 0 ? x.border() : x.own(parts[i]);
      values[i] = from.length == 0 ? 0 : from[latents[i]];
    }
    return values;
  }

  private void scatter(double[] values, Point into) {
    for (int i = 0; i < values.length; i++) {
      double[] to = parts[i] < 0 ? into.border() : into.own(parts[i]);
      if (to.length > 0) {
        to[latents[i]] += values[i];
      }
    }
  }

  void addGradient(Likelihood.Curve curve, Point gradient) {
    double[] values = new double[parts.length];
    term.addGradient(curve, values);
    scatter(values, gradient);
  }

  void addProduct(Likelihood.Curve curve, Point vector, Point product) {
    double[] values = new double[parts.length];
    term.addProduct(curve, gather(vector), values);
    scatter(values, product);
  }

  /** Adds factor times the weights of a predictor. */
  void addRow(int predictor, double factor, Point into) {
    double[] values = new double[parts.length];
    term.addRow(predictor, factor, values);
    scatter(values, into);
  }

  int predictors() {
    return term.predictors();
  }

  /** Whether all of its groups are at rest. */
  boolean rests(Assembly assembly) {
    return cuts.stream().allMatch(cut -> assembly.rests(cut.part()));
  }
}
