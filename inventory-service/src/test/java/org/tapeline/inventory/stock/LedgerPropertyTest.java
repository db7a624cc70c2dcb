package org.tapeline.inventory.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever moves, nothing appears and nothing is lost. */
class LedgerPropertyTest {

  @Property
  void theSumOfAllAccountsIsZero(@ForAll("moves") List<Move> moves) {
    Map<String, Integer> sums = new HashMap<>();
    for (Move move : moves) {
      move.entries().forEach(e -> sums.merge(e.item() + "/" + e.model(), e.amount(), Integer::sum));
    }
    assertThat(sums.values()).allMatch(sum -> sum == 0);
  }

  @Provide
  Arbitrary<List<Move>> moves() {
    Arbitrary<String> account = Arbitraries.of("place:A", "place:B", "outside:used");
    return Combinators.combine(
            account,
            account,
            Arbitraries.of("valve", "liner"),
            Arbitraries.of("", "model-a"),
            Arbitraries.integers().between(-500, 500).filter(n -> n != 0))
        .filter((from, to, item, model, n) -> !from.equals(to))
        .as(Move::new)
        .list();
  }
}
