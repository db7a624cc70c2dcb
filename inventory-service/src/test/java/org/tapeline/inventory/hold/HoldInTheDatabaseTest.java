package org.tapeline.inventory.hold;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.hold.HoldCriteria.Described;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@Tag("containers")
@DisplayName("The database and the rule")
class HoldInTheDatabaseTest {
  private static final int CRITERIA = 150;
  private static final List<String> MODELS = List.of("model-ha", "model-hb", "model-hc");
  private static final List<String> LOTS = List.of("H-1", "H-2", "H-3", "not-stated");

  @Inject Database database;
  @Inject HoldCounts counts;

  @Test
  @DisplayName("name the same helmets, whatever the criteria")
  void agree() {
    Random random = new Random(20_260_801);
    database.change(
        "insert into place values ('HOLDS', 'Hold test', 'depot', 0, 'UTC') on conflict do"
            + " nothing");
    for (int i = 0; i < 80; i++) {
      database.change(
          "insert into helmet (tag, model, size, lot, manufactured_on, place, state)"
              + " values (?, ?, 'youth-small', ?, ?, 'HOLDS', 'available')",
          "HT" + i,
          MODELS.get(random.nextInt(3)),
          LOTS.get(random.nextInt(4)),
          day(random));
    }
    List<Described> helmets =
        database.list(
            "select * from helmet where state not in ('ordered', 'retired')",
            row ->
                new Described(
                    row.getString("tag"),
                    row.getString("model"),
                    row.getString("lot"),
                    Optional.ofNullable(row.getObject("manufactured_on", LocalDate.class))));
    int some = 0;
    for (int i = 0; i < CRITERIA; i++) {
      HoldCriteria criteria = any(random);
      List<String> expected =
          helmets.stream().filter(criteria::covers).map(Described::tag).toList();
      some += expected.isEmpty() ? 0 : 1;
      assertThat(counts.tags(criteria))
          .as(criteria.toString())
          .containsExactlyInAnyOrderElementsOf(expected);
    }
    assertThat(some).isGreaterThan(CRITERIA / 2);
    database.change("delete from helmet where place = 'HOLDS'");
  }

  private static LocalDate day(Random random) {
    return LocalDate.of(2025, 1, 1).plusDays(random.nextInt(10));
  }

  private static HoldCriteria any(Random random) {
    Set<String> lots = new TreeSet<>();
    Set<String> tags = new TreeSet<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      lots.add(LOTS.get(random.nextInt(3)));
    }
    for (int i = random.nextInt(3); i > 0; i--) {
      tags.add("HT" + random.nextInt(100));
    }
    LocalDate from = day(random);
    return new HoldCriteria(
        Optional.of(MODELS.get(random.nextInt(3))).filter(m -> random.nextBoolean()),
        lots,
        Optional.of(from).filter(d -> random.nextInt(3) == 0),
        Optional.of(from.plusDays(random.nextInt(5))).filter(d -> random.nextInt(3) == 0),
        tags);
  }
}
