package org.tapeline.notify.mail;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.mail.internet.AddressException;
import jakarta.mail.internet.InternetAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.Location;
import net.fortuna.ical4j.model.property.Method;
import net.fortuna.ical4j.model.property.Organizer;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.Status;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableMethod;
import net.fortuna.ical4j.model.property.immutable.ImmutableStatus;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;

/**
 * Writes the calendar file of a re-fit (RFC 5545, RFC 5546). One UID for each case, so that a later
 * file replaces the earlier entry, and one that calls it off takes it away; PUBLISH, since no
 * answer is wanted and so no family's address has to stand in it. The organizer is the
 * association's own sender address, without which no calendar takes a CANCEL.
 */
@ApplicationScoped
public class RefitCalendar {
  private static final int MOST_OCTETS = 75;

  private final String domain;
  private final URI organizer;

  RefitCalendar(MailSettings settings) {
    this.domain = settings.domain();
    try {
      this.organizer = URI.create("mailto:" + new InternetAddress(settings.from()).getAddress());
    } catch (AddressException e) {
      throw new IllegalArgumentException("tapeline.mail.from is not an address", e);
    }
  }

  /**
   * @param revision rises with every booking of the case, and when it is called off: a calendar
   *     keeps the highest
   * @param writtenAt when the file is written
   * @param startsAt start of the slot, before {@code endsAt}
   */
  public record Entry(
      UUID refitCase,
      int revision,
      Instant writtenAt,
      Instant startsAt,
      Instant endsAt,
      String summary,
      String place,
      String description) {}

  /** The file that puts the date into a calendar, with CRLF and folded lines. */
  public String write(Entry entry) {
    return write(List.of(entry));
  }

  /** The same for several re-fits, each an entry of its own. */
  public String write(List<Entry> entries) {
    return file(entries, ImmutableMethod.PUBLISH, ImmutableStatus.VEVENT_CONFIRMED);
  }

  /** The file that takes dates out again. */
  public String cancel(List<Entry> entries) {
    return file(entries, ImmutableMethod.CANCEL, ImmutableStatus.VEVENT_CANCELLED);
  }

  private String file(List<Entry> entries, Method method, Status status) {
    Calendar calendar = new Calendar();
    calendar.add(new ProdId("-//Tapeline//Notices//EN"));
    calendar.add(ImmutableVersion.VERSION_2_0);
    calendar.add(method);
    entries.forEach(entry -> calendar.add(event(entry, status)));
    return folded(calendar.toString());
  }

  private VEvent event(Entry entry, Status status) {
    VEvent event = new VEvent(entry.startsAt(), entry.endsAt(), entry.summary());
    event
        .replace(new DtStamp(entry.writtenAt()))
        .add(new Uid("refit-" + entry.refitCase() + "@" + domain))
        .add(new Sequence(entry.revision()))
        .add(new Organizer(organizer))
        .add(status)
        .add(new Location(entry.place()))
        .add(new Description(entry.description()));
    return event;
  }

  /** Folds by octets, as the RFC says (section 3.1); the library folds by characters. */
  private static String folded(String file) {
    StringBuilder folded = new StringBuilder();
    int octets = 0;
    for (int at = 0; at < file.length(); at += Character.charCount(file.codePointAt(at))) {
      String one = Character.toString(file.codePointAt(at));
      int more = one.getBytes(StandardCharsets.UTF_8).length;
      if (one.equals("\r") || one.equals("\n")) {
        octets = 0;
      } else if (octets + more > MOST_OCTETS) {
        folded.append("\r\n ");
        octets = 1 + more;
      } else {
        octets += more;
      }
      folded.append(one);
    }
    return folded.toString();
  }
}
