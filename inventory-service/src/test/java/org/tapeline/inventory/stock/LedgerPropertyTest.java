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
    Balances balances = new Balances();
    moves.forEach(balances::book);
    Map<String, Integer> sums = new HashMap<>();
    balances
        .lines()
        .forEach((key, n) -> sums.merge(key.item() + "/" + key.model(), n, Integer::sum));
    assertThat(sums.values()).allMatch(sum -> sum == 0);
  }

  @Property
  void aMoveAndTheSameBackChangeNothing(@ForAll("moves") List<Move> moves) {
    Balances there = new Balances();
    moves.forEach(there::book);
    for (Move m : moves.reversed()) {
      there.book(new Move(m.to(), m.from(), m.item(), m.model(), m.quantity()));
    }
    assertThat(there.lines()).isEmpty();
  }

  @Property
  void theShelfIsWhatTheMovesLeftThere(@ForAll("moves") List<Move> moves) {
    Balances balances = new Balances();
    moves.forEach(balances::book);
    int sum =
        moves.stream()
            .flatMap(m -> m.entries().stream())
            .filter(e -> e.account().equals("place:A") && e.item().equals("valve"))
            .mapToInt(Move.Entry::amount)
            .sum();
    assertThat(balances.on("place:A", "valve")).isEqualTo(sum);
    int onShelf = balances.shelf("A", "valve").pieces().values().stream().mapToInt(n -> n).sum();
    assertThat(onShelf).isEqualTo(sum);
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
