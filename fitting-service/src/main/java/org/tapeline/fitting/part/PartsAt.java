package org.tapeline.fitting.part;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Pieces of each part at a place by the records; what was never counted there is not named. */
public final class PartsAt {
  /** Counts, and the moves since the newest count of the part there. */
  private static final String PIECES =
      """
      select item, cast(greatest(0, sum(pieces)) as int)
      from (
        select item, counted as pieces from part_count
        where place = :place and (:model = '' or model in ('', :model))
        union all
        select m.item, m.pieces from part_move m
        where m.place = :place and not exists (
          select 1 from part_count c
          where c.place = m.place and c.item = m.item and c.at >= m.at
            and (:model = '' or c.model in ('', :model)))
      ) as known
      group by item
      """;

  private static final String ANY_MODEL = "";

  private PartsAt() {}

  /** What is there for any helmet, by item, whatever its model. */
  public static Map<String, Integer> place(String place) {
    return of(place, ANY_MODEL);
  }

  /**
   * What is there for a helmet of that model: a use does not say for which model it was, and is
   * taken off in any case.
   */
  public static Map<String, Integer> place(String place, String model) {
    return of(place, model);
  }

  private static Map<String, Integer> of(String place, String model) {
    List<?> rows =
        PartCount.getEntityManager()
            .createNativeQuery(PIECES)
            .setParameter("place", place)
            .setParameter("model", model)
            .getResultList();
    Map<String, Integer> pieces = new TreeMap<>();
    for (Object row : rows) {
      Object[] cell = (Object[]) row;
      pieces.put((String) cell[0], ((Number) cell[1]).intValue());
    }
    return pieces;
  }
}
