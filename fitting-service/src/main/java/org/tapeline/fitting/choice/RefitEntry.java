package org.tapeline.fitting.choice;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.Location;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableMethod;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;
import org.tapeline.fitting.fitday.FitDayCalendar;

/**
 * A re-fit as a calendar entry (RFC 5545), with the UID and the revision that notify's file of the
 * same case has, so that either replaces the other's older entry.
 *
 * @param revision rises with every booking of the case: a calendar keeps the highest
 * @param writtenAt when the file is asked for
 */
record RefitEntry(
    String uid,
    long revision,
    Instant writtenAt,
    Instant startsAt,
    Instant endsAt,
    String summary,
    String place,
    String description) {

  /** The file's text, with CRLF and folded lines. */
  static String write(RefitEntry entry) {
    VEvent event = new VEvent(entry.startsAt(), entry.endsAt(), entry.summary());
    event
        .replace(new DtStamp(entry.writtenAt().truncatedTo(ChronoUnit.SECONDS)))
        .add(new Uid(entry.uid()))
        .add(new Sequence(Math.toIntExact(entry.revision())))
        .add(new Location(entry.place()))
        .add(new Description(entry.description()));
    Calendar calendar = new Calendar();
    calendar.add(new ProdId("-//Tapeline//Notices//EN"));
    calendar.add(ImmutableVersion.VERSION_2_0);
    calendar.add(ImmutableMethod.PUBLISH);
    calendar.add(event);
    return FitDayCalendar.folded(calendar.toString());
  }
}
