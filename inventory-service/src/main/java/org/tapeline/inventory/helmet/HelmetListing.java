package org.tapeline.inventory.helmet;

import jakarta.ws.rs.QueryParam;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import org.tapeline.inventory.helmet.HelmetList.Column;
import org.tapeline.inventory.helmet.HelmetList.Filter;

/** Which helmets are asked for and in which order, as the address of the list says it. */
public class HelmetListing {
  @QueryParam("place")
  String place;

  @QueryParam("model")
  String model;

  @QueryParam("size")
  String size;

  @QueryParam("state")
  String state;

  @QueryParam("certified")
  String certified;

  @QueryParam("sort")
  String sort;

  @QueryParam("falling")
  String falling;

  public Filter filter() {
    return new Filter(place, model, size, state, certified);
  }

  /** What is no column sorts by place. */
  public Column column() {
    return Arrays.stream(Column.values())
        .filter(c -> c.name().toLowerCase(Locale.ROOT).equals(sort))
        .findFirst()
        .orElse(Column.PLACE);
  }

  public boolean isFalling() {
    return falling != null && !falling.isEmpty();
  }

  /** The filter as it stands in an address, with its question mark. */
  public String query() {
    Filter f = filter();
    return "?place="
        + encoded(f.place())
        + "&model="
        + encoded(f.model())
        + "&size="
        + encoded(f.size())
        + "&state="
        + encoded(f.state())
        + "&certified="
        + encoded(f.certified());
  }

  /** The same with the order. */
  public String queryInOrder() {
    return query() + order(column().name(), isFalling());
  }

  /** The same sorted by a column; by it already, then the other way round. */
  public String sorted(String by) {
    boolean now = column().name().equalsIgnoreCase(by);
    return query() + order(by, now && !isFalling());
  }

  /** How the column is sorted: ascending, descending, or empty. */
  public String sortOf(String by) {
    boolean now = column().name().equalsIgnoreCase(by);
    return !now ? "" : isFalling() ? "descending" : "ascending";
  }

  private static String order(String by, boolean falling) {
    return "&sort=" + by.toLowerCase(Locale.ROOT) + (falling ? "&falling=yes" : "");
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
