package org.tapeline.inventory.desk;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.tapeline.inventory.chart.BandedBars;
import org.tapeline.inventory.chart.BandedBars.Bar;
import org.tapeline.inventory.chart.Charts;
import org.tapeline.inventory.chart.Picture;
import org.tapeline.inventory.helmet.Words;

/** What is short and by when, with a picture of each model's sizes. */
@Path("/short")
@RolesAllowed({"equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class ShortPage {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("MMM d", Locale.US);

  private final ShortList list;
  private final Clock clock;

  ShortPage(ShortList list, Clock clock) {
    this.list = list;
    this.clock = clock;
  }

  @CheckedTemplate(basePath = "desk")
  static class Templates {
    private Templates() {}

    static native TemplateInstance missing(List<Row> rows, boolean all, List<Picture> charts);
  }

  /** A line with its days in words. */
  public record Row(ShortLine line, String by, String coming) {}

  @GET
  public String show(@QueryParam("all") String all) {
    boolean whole = all != null && !all.isEmpty();
    LocalDate today = LocalDate.now(clock);
    List<ShortLine> lines = list.lines(today);
    List<Row> rows =
        lines.stream().filter(l -> whole || l.isShort()).map(l -> row(l, today)).toList();
    return Templates.missing(rows, whole, charts(lines)).render();
  }

  private static Row row(ShortLine line, LocalDate today) {
    String by =
        line.shortage()
            .map(s -> s.firstDay().isAfter(today) ? DAY.format(s.firstDay()) : since(s, today))
            .orElse("");
    StringBuilder coming = new StringBuilder();
    line.coming()
        .forEach(
            c ->
                coming
                    .append(coming.isEmpty() ? "" : ", ")
                    .append(c.pieces())
                    .append(" on ")
                    .append(DAY.format(c.day())));
    if (line.undated() > 0) {
      coming.append(coming.isEmpty() ? "" : ", ").append(line.undated()).append(" without a day");
    }
    return new Row(line, by, coming.toString());
  }

  private static String since(Shortage shortage, LocalDate today) {
    return shortage.firstDay().equals(today)
        ? "today"
        : "now, since " + DAY.format(shortage.firstDay());
  }

  private static List<Picture> charts(List<ShortLine> lines) {
    Map<String, List<ShortLine>> models = new LinkedHashMap<>();
    lines.stream()
        .filter(l -> l.forecast().isPresent())
        .forEach(l -> models.computeIfAbsent(l.model(), m -> new ArrayList<>()).add(l));
    return models.entrySet().stream().map(e -> chart(e.getKey(), e.getValue())).toList();
  }

  private static Picture chart(String model, List<ShortLine> sizes) {
    List<String> few =
        sizes.stream()
            .filter(l -> l.counts().usable() < l.forecast().orElseThrow().expected())
            .map(l -> Words.code(l.size()))
            .toList();
    String says =
        few.isEmpty()
            ? "There are as many of each size as the season is expected to need."
            : "Fewer than the season is expected to need: " + String.join(", ", few) + ".";
    return Charts.of(
        new BandedBars(
            Words.model(model) + ": what the season needs and what is usable.",
            says,
            "helmets",
            "expected need",
            "5 to 95 %",
            "usable now",
            sizes.stream().map(ShortPage::bar).toList()));
  }

  /** Sizing's band is of whole helmets, so that a mean may lie a little beside it. */
  private static Bar bar(ShortLine line) {
    ShortLine.Forecast f = line.forecast().orElseThrow();
    return new Bar(
        Words.code(line.size()),
        f.expected(),
        Math.min(f.low(), f.expected()),
        Math.max(f.high(), f.expected()),
        OptionalDouble.of(line.counts().usable()));
  }
}
