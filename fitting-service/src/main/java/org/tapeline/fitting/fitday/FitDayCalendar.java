package org.tapeline.fitting.fitday;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.Location;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableStatus;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;

/**
 * Writes fit days as a calendar (RFC 5545): one UID a day for ever, a higher SEQUENCE with every
 * move, and a cancelled day still there with its STATUS, since a calendar that was not told would
 * go on showing it.
 */
public final class FitDayCalendar {
  /** Section 3.1: lines of at most 75 octets without the break. */
  private static final int MOST_OCTETS = 75;

  private FitDayCalendar() {}

  /**
   * The text of the file, with CRLF and folded lines.
   *
   * @param writtenAt when it is asked for
   */
  public static String write(List<CalendarDay> days, Instant writtenAt) {
    Calendar calendar = new Calendar();
    calendar.add(new ProdId("-//Tapeline//Fit days//EN"));
    calendar.add(ImmutableVersion.VERSION_2_0);
    days.forEach(day -> calendar.add(event(day, writtenAt.truncatedTo(ChronoUnit.SECONDS))));
    return folded(calendar.toString());
  }

  private static VEvent event(CalendarDay day, Instant writtenAt) {
    VEvent event = new VEvent(day.startsAt(), day.endsAt(), "Fit day at " + day.place());
    event
        .replace(new DtStamp(writtenAt))
        .add(new Uid("fit-day-" + day.fitDay() + "@tapeline"))
        .add(new Sequence(day.sequence()))
        .add(new Location(day.place()))
        .add(new Description(description(day)))
        .add(day.cancelled() ? ImmutableStatus.VEVENT_CANCELLED : ImmutableStatus.VEVENT_CONFIRMED);
    return event;
  }

  private static String description(CalendarDay day) {
    if (day.cancelled()) {
      return "Does not take place.";
    }
    List<String> lines = new ArrayList<>();
    lines.add(day.booked() + " booked, " + day.free() + " free");
    lines.addAll(day.lines());
    return String.join("\n", lines);
  }

  /** Folds by octets and never within a character; the library folds by characters. */
  public static String folded(String file) {
    StringBuilder text = new StringBuilder();
    for (String line : file.replaceAll("\r\n[ \t]", "").split("\r\n")) {
      int octets = 0;
      for (int code : line.codePoints().toArray()) {
        String one = Character.toString(code);
        int more = one.getBytes(StandardCharsets.UTF_8).length;
        if (octets + more > MOST_OCTETS) {
          text.append("\r\n ");
          octets = 1;
        }
        text.append(one);
        octets += more;
      }
      text.append("\r\n");
    }
    return text.toString();
  }
}
