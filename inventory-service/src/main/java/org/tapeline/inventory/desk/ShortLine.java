package org.tapeline.inventory.desk;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tapeline.inventory.desk.Shortage.Dated;

/**
 * A size of a model, or a part, with what is needed and what is there.
 *
 * @param needKey {@code helmet:<model>:<size>} or the part's code
 * @param coming what was asked for or ordered and has a day
 * @param undated pieces that were ordered without a day; nobody may count on them
 */
public record ShortLine(
    String needKey,
    Optional<Forecast> forecast,
    Counts counts,
    List<Dated> coming,
    int undated,
    Optional<Shortage> shortage) {

  /** The season's need of a size, as sizing told it. */
  public record Forecast(LocalDate neededOn, double expected, int low, int high) {
    public long rounded() {
      return Math.round(expected);
    }
  }

  /**
   * What there is and who waits.
   *
   * @param usable pieces in service, those that players have included
   * @param free pieces that could be given out now; below 0 is a count to do
   * @param waiting re-fits that wait for it, {@code urgent} of them must not wear a helmet
   * @param since the day from which the first of them waits
   */
  public record Counts(int usable, int free, int waiting, int urgent, LocalDate since) {}

  /** Something that comes; without a day when nobody said one. */
  record Arrival(String needKey, Optional<LocalDate> day, int pieces) {}

  static ShortLine of(
      String needKey,
      Optional<Forecast> forecast,
      Counts counts,
      List<Arrival> arrivals,
      LocalDate today) {
    List<Dated> coming =
        arrivals.stream()
            .flatMap(a -> a.day().stream().map(day -> new Dated(soonest(day, today), a.pieces())))
            .sorted(Comparator.comparing(Dated::day))
            .toList();
    int undated = arrivals.stream().filter(a -> a.day().isEmpty()).mapToInt(Arrival::pieces).sum();
    Optional<Shortage> shortage =
        Shortage.worse(
            Shortage.worse(waits(counts, coming), season(forecast, counts, coming)),
            below(counts, today));
    return new ShortLine(needKey, forecast, counts, coming, undated, shortage);
  }

  /** What is late is hoped for tomorrow: its own day would hide that it is not there. */
  private static LocalDate soonest(LocalDate day, LocalDate today) {
    return day.isBefore(today) ? today.plusDays(1) : day;
  }

  private static Optional<Shortage> waits(Counts counts, List<Dated> coming) {
    return Shortage.of(counts.free(), List.of(new Dated(counts.since(), counts.waiting())), coming);
  }

  private static Optional<Shortage> season(
      Optional<Forecast> forecast, Counts counts, List<Dated> coming) {
    return forecast.flatMap(
        f ->
            Shortage.of(
                counts.usable(), List.of(new Dated(f.neededOn(), (int) f.rounded())), coming));
  }

  private static Optional<Shortage> below(Counts counts, LocalDate today) {
    return counts.free() < 0 ? Optional.of(new Shortage(today, -counts.free())) : Optional.empty();
  }

  public boolean isShort() {
    return shortage.isPresent();
  }

  public int onTheWay() {
    return undated + coming.stream().mapToInt(Dated::pieces).sum();
  }

  public boolean ofHelmet() {
    return needKey.startsWith("helmet:");
  }

  /** The model of a helmet, else nothing. */
  public String model() {
    return ofHelmet() ? needKey.split(":")[1] : "";
  }

  public String size() {
    return ofHelmet() ? needKey.split(":")[2] : "";
  }
}
