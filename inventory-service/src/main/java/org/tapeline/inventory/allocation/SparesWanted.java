package org.tapeline.inventory.allocation;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.tapeline.inventory.allocation.Seeker.Acceptable;
import org.tapeline.inventory.allocation.Seeker.Liking;
import org.tapeline.inventory.database.Database;

/**
 * The spares that each field should have, by what is worn there: each stands in the plan as
 * somebody who accepts that kind alone, so that what is there already stays.
 */
@ApplicationScoped
public class SparesWanted {
  private static final String WORN =
      """
      select f.field, h.model, h.size, count(*) as worn
        from helmet h join player_field f on f.player = h.holder
       group by 1, 2, 3 order by 1, 2, 3
      """;

  private final Database database;
  private final AllocationPolicy policy;

  SparesWanted(Database database, AllocationPolicy policy) {
    this.database = database;
    this.policy = policy;
  }

  private record Worn(String field, Kind kind, int pieces) {}

  /** What is on its way as a spare already is not wanted once more. */
  List<Seeker> wanted(Instant now) {
    Set<UUID> coming =
        database
            .list("select player from planned_helmet", row -> row.getObject(1, UUID.class))
            .stream()
            .collect(Collectors.toSet());
    List<Seeker> wanted = new ArrayList<>();
    for (Worn worn : worn()) {
      for (int i = 0; i < policy.spares(worn.pieces()); i++) {
        UUID id = id(worn, i);
        if (!coming.contains(id)) {
          List<Acceptable> accepts = List.of(new Acceptable(worn.kind(), Liking.ADVISED));
          wanted.add(new Seeker(id, worn.field(), false, now, accepts));
        }
      }
    }
    return wanted;
  }

  /** The same each time: no player has it. */
  private static UUID id(Worn worn, int number) {
    String name = "spare/" + worn.field() + "/" + worn.kind().item() + "/" + number;
    return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
  }

  private List<Worn> worn() {
    return database.list(
        WORN,
        row ->
            new Worn(
                row.getString("field"),
                new Kind(row.getString("model"), row.getString("size")),
                row.getInt("worn")));
  }
}
