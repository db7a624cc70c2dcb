package org.tapeline.fitting.overview;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.fitday.FitDayFeedLink;
import org.tapeline.fitting.fitday.FitDayView;
import org.tapeline.fitting.fitday.FitMinutes;
import org.tapeline.fitting.fitday.FitTimes;
import org.tapeline.fitting.place.Place;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.access.Caller;

/** Draws the page of the coming fit days, with a form that was refused in its place. */
@ApplicationScoped
class FitDayScreen {
  private final BookedPlayers booked;
  private final FitTimes times;
  private final FitDayFeedLink feed;
  private final Caller caller;
  private final Transactions transactions;
  private final Clock clock;

  FitDayScreen(
      BookedPlayers booked,
      FitTimes times,
      FitDayFeedLink feed,
      Caller caller,
      Transactions transactions,
      Clock clock) {
    this.booked = booked;
    this.times = times;
    this.feed = feed;
    this.caller = caller;
    this.transactions = transactions;
    this.clock = clock;
  }

  @CheckedTemplate(basePath = "overview")
  static class Templates {
    private Templates() {}

    static native TemplateInstance fitdays(
        List<Day> days, List<FieldChoice> fields, FitDayForm form, String feed);
  }

  /** A fit day with the players of its bookings, and the form to move it. */
  public record Day(
      FitDayView view, List<BookedPlayers.Booked> booked, UUID cancelId, FitDayForm form) {}

  /**
   * @param refused a form that could not be done; the day that it would move, or else the new one
   */
  String page(Optional<FitDayForm> refused) {
    return transactions.required(
        c -> {
          List<FieldChoice> fields = fields();
          List<Day> days =
              FitDayView.coming(clock.instant()).stream()
                  .filter(view -> caller.mayWorkAt(view.field()))
                  .map(view -> day(view, refused))
                  .toList();
          FitDayForm announce =
              refused.filter(f -> f.id().equals("new")).orElseGet(() -> announcing(fields));
          return Templates.fitdays(days, fields, announce, feed.address()).render();
        });
  }

  private Day day(FitDayView view, Optional<FitDayForm> refused) {
    String id = view.fitDay().toString();
    return new Day(
        view,
        booked.on(view),
        UuidV7.next(),
        refused.filter(form -> form.id().equals(id)).orElseGet(() -> moving(view)));
  }

  private List<FieldChoice> fields() {
    List<Place> own = Place.fields().stream().filter(p -> caller.mayWorkAt(p.code)).toList();
    Map<String, FitMinutes> minutes = times.at(own.stream().map(p -> p.code).toList());
    return own.stream()
        .map(
            p ->
                new FieldChoice(
                    p.code, p.name, minutes.get(p.code).minutes(), minutes.get(p.code).said()))
        .toList();
  }

  private static FitDayForm announcing(List<FieldChoice> fields) {
    String minutes = fields.isEmpty() ? "" : Integer.toString(fields.getFirst().minutes());
    return FitDayForm.of("new", UuidV7.next(), Map.of("fitters", "2", "minutesPerFit", minutes));
  }

  private static FitDayForm moving(FitDayView view) {
    return FitDayForm.of(
        view.fitDay().toString(),
        UuidV7.next(),
        Map.of(
            "field", view.field(),
            "date", view.date(),
            "opens", view.opens(),
            "closes", view.closes(),
            "fitters", Integer.toString(view.fitters()),
            "minutesPerFit", Integer.toString(view.minutesPerFit())));
  }
}
