package org.tapeline.inventory.helmet;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.tapeline.inventory.helmet.HelmetCommand.Order;
import org.tapeline.inventory.helmet.TagText.Good;
import org.tapeline.inventory.place.Places;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/** Notes helmets that are on their way, under given tags or fresh ones: all of them, or none. */
@ApplicationScoped
public class HelmetOrders {
  private static final int MOST = 500;

  private final HelmetDesk desk;
  private final HelmetTags fresh;
  private final TagReading reading;
  private final Places places;
  private final CommandLog commands;
  private final Clock clock;

  HelmetOrders(
      HelmetDesk desk,
      HelmetTags fresh,
      TagReading reading,
      Places places,
      CommandLog commands,
      Clock clock) {
    this.desk = desk;
    this.fresh = fresh;
    this.reading = reading;
    this.places = places;
    this.commands = commands;
    this.clock = clock;
  }

  /**
   * What is ordered.
   *
   * @param expectedOn a day as 2027-08-01; empty when it is not known
   * @param count how many get fresh tags, besides those with given ones
   */
  public record Ask(
      String model,
      String size,
      String place,
      String expectedOn,
      Integer count,
      List<String> tags) {
    public Ask {
      count = count == null ? 0 : count;
      tags = tags == null ? List.of() : List.copyOf(tags);
    }
  }

  /** Under these tags. */
  public record Ordered(List<String> tags) {}

  /**
   * @throws Problem 400 for what is wrong in it, 409 for a tag that is on a helmet already
   */
  Answer order(Ask ask, UUID id) {
    if (ask == null) {
      throw Problem.badRequest("order", "Say what is ordered.");
    }
    List<FieldError> errors =
        new DeliveryForm(ask.model(), ask.size(), "", "", "", ask.place())
            .kindErrors(places::exists);
    Optional<LocalDate> expected =
        DeliveryForm.day("expectedOn", ask.expectedOn() == null ? "" : ask.expectedOn(), errors);
    if (ask.count() < 0
        || ask.count() + ask.tags().size() < 1
        || ask.count() + ask.tags().size() > MOST) {
      errors.add(new FieldError("count", "Order 1 to " + MOST + " helmets at a time."));
    }
    List<String> given = given(ask.tags(), errors);
    DeliveryForm.refuse(errors);
    Order order =
        new Order(
            ask.model().strip(),
            ask.size().strip(),
            ask.place().strip(),
            expected,
            clock.instant());
    return commands.once(
        id, "order-helmets", ask, () -> Answer.of(201, run(order, given, ask.count(), id)));
  }

  private List<String> given(List<String> typed, List<FieldError> errors) {
    List<String> tags = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < typed.size(); i++) {
      String field = "tags[" + i + "]";
      if (!(reading.read(typed.get(i)) instanceof Good good)) {
        errors.add(new FieldError(field, "This is no tag, or was misread."));
      } else if (!seen.add(good.tag().value())) {
        errors.add(new FieldError(field, "This tag stands in the order twice."));
      } else {
        tags.add(good.tag().value());
      }
    }
    return tags;
  }

  private Ordered run(Order order, List<String> given, int count, UUID id) {
    List<String> tags =
        Stream.concat(given.stream(), Stream.generate(() -> fresh.next().value()).limit(count))
            .toList();
    tags.forEach(tag -> desk.run(tag, order, Cause.command(id).step("order-" + tag)));
    return new Ordered(tags);
  }
}
