package org.tapeline.inventory.restock;

import com.fasterxml.jackson.annotation.JsonProperty;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tapeline.journal.EventJson;

/** Which items are kept on shelves and how: data in {@code policy/items.json}. */
@ApplicationScoped
public class RestockItems {
  private final File file;
  private final Map<String, ItemClass> classes;
  private final Map<String, Item> byItem;

  RestockItems() {
    try (InputStream data = RestockItems.class.getResourceAsStream("/policy/items.json")) {
      file = EventJson.MAPPER.readValue(data, File.class);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    classes =
        file.classes().stream().collect(Collectors.toMap(ItemClass::name, Function.identity()));
    byItem =
        Stream.concat(file.items().stream(), file.helmets().stream())
            .collect(Collectors.toMap(Item::item, Function.identity()));
    byItem.values().forEach(this::check);
  }

  /** The file. */
  record File(
      double reviewDays,
      Lead leadTime,
      double keepingShareAYear,
      long orderCost,
      List<ItemClass> classes,
      List<Item> items,
      List<Item> helmets) {}

  /** How much the policy's lead time is worth, see {@code LeadTime}. */
  record Lead(double worthArrivals, double spread) {}

  /**
   * What is promised.
   *
   * @param service {@code fill-rate}: the share of demand that is served from the shelf
   */
  record ItemClass(String name, String service, double promised) {}

  /**
   * @param item a part's code, or {@code helmet:<model>} for all sizes of it
   * @param shelf where it lies at a depot
   * @param pack pieces that are sold together
   * @param cost of one piece, in hundredths of the currency
   * @param keptAt kinds of places that keep some: {@code field}, {@code depot}
   */
  public record Item(
      String item,
      @JsonProperty("class") String itemClass,
      String shelf,
      int pack,
      long cost,
      List<String> keptAt) {}

  private void check(Item item) {
    ItemClass of = classes.get(item.itemClass());
    if (of == null
        || !of.service().equals("fill-rate")
        || !(of.promised() > 0 && of.promised() < 1)
        || item.pack() < 1
        || item.cost() < 1
        || !(file.reviewDays() > 0)) {
      throw new IllegalStateException("items.json is wrong about " + item.item());
    }
  }

  /** Empty for what is kept nowhere and only requested when a case needs it. */
  public Optional<Item> of(String item) {
    String[] words = item.split(":");
    return Optional.ofNullable(byItem.get(words.length == 3 ? words[0] + ":" + words[1] : item));
  }

  List<String> parts() {
    return file.items().stream().map(Item::item).toList();
  }

  double promised(Item item) {
    return classes.get(item.itemClass()).promised();
  }

  double reviewDays() {
    return file.reviewDays();
  }

  Lead lead() {
    return file.leadTime();
  }

  double keepingShareAYear() {
    return file.keepingShareAYear();
  }

  long orderCost() {
    return file.orderCost();
  }
}
