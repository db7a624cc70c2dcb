package org.tapeline.sizing.measurer;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Who measures, and how well, from the association's own heads. */
@ApplicationScoped
public class Measurers {
  /** The newest heads count, so that a worn tape shows and practice pays. */
  private static final int HEADS = 200;

  private static final String PAIRS =
      """
      select count(apart_mm), coalesce(sum(apart_mm * apart_mm), 0),
             count(*) filter (where apart_mm > 5)
        from (select apart_mm from head where measured_by = ?1 and apart_mm is not null
               order by measured_at desc limit ?2) newest
      """;

  private final EntityManager entities;
  private final TapeCheck tapes;

  Measurers(EntityManager entities, TapeCheck tapes) {
    this.entities = entities;
    this.tapes = tapes;
  }

  /**
   * A measurer, for the equipment manager.
   *
   * @param thirds of the pairs, how many lay too far apart
   */
  public record Measurer(String id, RepeatError error, long thirds, TapeBias bias) {
    public boolean inOrder() {
      return !error.large() && !bias.clear();
    }
  }

  /** What the pairs of the newest heads of a measurer say. */
  private record Pairs(RepeatError error, long thirds) {}

  /** Of the newest heads of a measurer. */
  public RepeatError repeatError(String by) {
    return pairs(by).error();
  }

  /** All who measured within the last year, those first whose work needs a look. */
  public List<Measurer> all() {
    List<Measurer> all = new ArrayList<>();
    for (Object by :
        entities
            .createNativeQuery(
                "select distinct measured_by from head"
                    + " where measured_at > current_timestamp - interval '1 year' order by 1")
            .getResultList()) {
      String id = (String) by;
      Pairs pairs = pairs(id);
      all.add(new Measurer(id, pairs.error(), pairs.thirds(), tapes.bias(id, HEADS)));
    }
    all.sort(Comparator.comparing(Measurer::inOrder));
    return all;
  }

  private Pairs pairs(String by) {
    Object[] row =
        (Object[])
            entities
                .createNativeQuery(PAIRS)
                .setParameter(1, by)
                .setParameter(2, HEADS)
                .getSingleResult();
    return new Pairs(
        new RepeatError(((Number) row[0]).longValue(), ((Number) row[1]).doubleValue()),
        ((Number) row[2]).longValue());
  }
}
