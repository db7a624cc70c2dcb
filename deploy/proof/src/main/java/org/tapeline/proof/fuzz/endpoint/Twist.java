package org.tapeline.proof.fuzz.endpoint;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Predicate;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;

/**
 * One thing that is done wrong with a request.
 *
 * @param name what is wrong, as the report says it
 * @param fits where it can be done
 * @param change does it
 */
public record Twist(
    String name, Predicate<Endpoint> fits, BiConsumer<Draft, RandomGenerator> change) {

  /** All that is tried; the first changes nothing. */
  public static List<Twist> all(Known known) {
    return Stream.of(
            List.of(new Twist("as meant", e -> true, (draft, random) -> {})),
            AddressTwists.all(known),
            JsonTwists.all(known),
            FormTwists.all(known),
            CsvTwists.all(),
            HeaderTwists.all(),
            TokenTwists.all())
        .flatMap(List::stream)
        .toList();
  }

  /** The request that could be meant, with this one thing wrong. */
  public Draft of(Endpoint endpoint, Plain plain, RandomGenerator random) {
    Draft draft = plain.of(endpoint, random);
    change.accept(draft, random);
    return draft;
  }
}
