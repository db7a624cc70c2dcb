package org.tapeline.inventory.restock;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.tapeline.inventory.database.Database;

/** Which fields a place serves, and which places are near it. */
@ApplicationScoped
public class Catchment {
  private static final String SERVED =
      """
      select f.code from place f where f.kind = 'field' and ? = (
        select d.code from place d left join travel t
            on t.from_place = d.code and t.to_place = f.code
         where d.kind = 'depot' order by t.minutes nulls last, d.code limit 1)
       order by f.code
      """;
  private static final String NEAR =
      """
      select p.code from place p join travel t on t.from_place = p.code and t.to_place = ?
       order by p.kind = 'depot' desc, t.minutes, p.code
      """;

  private final Database database;

  Catchment(Database database) {
    this.database = database;
  }

  /** A field serves itself, a depot the fields to which it is the nearest depot. */
  List<String> served(String place, boolean depot) {
    return depot ? database.list(SERVED, row -> row.getString(1), place) : List.of(place);
  }

  /** From where something can be brought: depots first, then by the way. */
  List<String> near(String place) {
    return database.list(NEAR, row -> row.getString(1), place);
  }
}
