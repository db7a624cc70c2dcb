package org.tapeline.fitting.fitday;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;

/** The coming fit days as a calendar file. */
@ApplicationScoped
public class FitDayFeed {
  public static final String TYPE = "text/calendar; charset=UTF-8";

  private final Clock clock;

  FitDayFeed(Clock clock) {
    this.clock = clock;
  }

  /**
   * @param shown whether a field, by its code, is shown
   * @param lines what is to be read of a day that takes place
   */
  @Transactional
  public String of(Predicate<String> shown, Function<FitDayView, List<String>> lines) {
    List<CalendarDay> days =
        FitDayRow.endingAfter(clock.instant()).stream()
            .filter(row -> shown.test(row.field))
            .map(row -> CalendarDay.of(row, row.cancelled ? List.of() : said(row, lines)))
            .toList();
    return FitDayCalendar.write(days, clock.instant());
  }

  private static List<String> said(FitDayRow row, Function<FitDayView, List<String>> lines) {
    return lines.apply(FitDayView.of(row));
  }
}
