package org.tapeline.inventory.damage;

import jakarta.enterprise.context.ApplicationScoped;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Semaphore;
import org.tapeline.inventory.helmet.HelmetAccess;
import org.tapeline.inventory.helmet.HelmetDesk;
import org.tapeline.inventory.helmet.HelmetEvent.DamageReported;
import org.tapeline.inventory.helmet.HelmetViews;
import org.tapeline.inventory.helmet.HelmetViews.View;
import org.tapeline.journal.Answer;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;

/** Takes, shows and deletes the photo of a damage report; one photo a report. */
@ApplicationScoped
public class PhotoDesk {
  /** Pixels of a photo fill some tens of megabytes: not of many at a time. */
  private static final Semaphore AT_A_TIME = new Semaphore(2);

  private final PhotoStore store;
  private final HelmetAccess access;
  private final HelmetViews views;
  private final HelmetDesk helmets;
  private final CommandLog commands;
  private final Caller caller;
  private final Clock clock;

  PhotoDesk(
      PhotoStore store,
      HelmetAccess access,
      HelmetViews views,
      HelmetDesk helmets,
      CommandLog commands,
      Caller caller,
      Clock clock) {
    this.store = store;
    this.access = access;
    this.views = views;
    this.helmets = helmets;
    this.commands = commands;
    this.caller = caller;
    this.clock = clock;
  }

  /** How it went: the report, and the photo's size in pixels. */
  public record Kept(UUID report, int width, int height) {}

  /** Which photo is gone. */
  public record Gone(UUID report) {}

  /** A report, and its helmet as it is now. */
  record Reported(View helmet, DamageReported said) {}

  /**
   * A report of a helmet that the caller may see. Who sent it sees it also when the helmet, taken
   * from its player, counts as another field's.
   *
   * @throws Problem when there is none
   */
  Reported report(String tag, UUID report) {
    Optional<View> known = views.find(tag.strip());
    Optional<DamageReported> said = known.flatMap(h -> find(h.tag(), report));
    if (said.filter(r -> r.by().equals(caller.id())).isPresent()) {
      return new Reported(known.orElseThrow(), said.get());
    }
    View helmet = access.see(tag);
    return new Reported(
        helmet,
        said.orElseThrow(
            () -> Problem.notFound("The helmet " + tag + " has no such damage report.")));
  }

  private Optional<DamageReported> find(String tag, UUID report) {
    return helmets.life(tag).stream()
        .map(RecordedEvent::data)
        .filter(e -> e instanceof DamageReported r && r.report().equals(report))
        .map(e -> (DamageReported) e)
        .findFirst();
  }

  /**
   * Keeps a photo with its report.
   *
   * @throws Problem when the file is no photo, or the report has one
   */
  public Answer add(String tag, UUID report, byte[] file, UUID id) {
    String known = report(tag, report).helmet().tag();
    Photo.Taken taken = taken(file);
    Photo photo = taken.photo().orElseThrow(() -> wrong(taken.refused()));
    return commands.once(
        id,
        "damage-photo/" + report,
        sha256(file),
        () -> {
          if (!store.keep(report, known, photo, caller.id(), clock.instant())) {
            throw Problem.conflict(
                "photo-there",
                "This report has a photo already. The equipment manager can delete it.");
          }
          return Answer.of(200, new Kept(report, photo.width(), photo.height()));
        });
  }

  private static Photo.Taken taken(byte[] file) {
    AT_A_TIME.acquireUninterruptibly();
    try {
      return PhotoFile.take(file);
    } finally {
      AT_A_TIME.release();
    }
  }

  private static Problem wrong(String sentence) {
    return new Problem(
        422, "photo", "Not a photo", sentence, List.of(new Problem.FieldError("photo", sentence)));
  }

  /**
   * @throws Problem when there is none, or it shows a helmet that is not the caller's to see
   */
  byte[] see(UUID report) {
    PhotoStore.Known known = store.find(report).orElseThrow(PhotoDesk::none);
    report(known.tag(), report);
    return store.jpeg(report).orElseThrow(PhotoDesk::none);
  }

  /** Deletes it; the report itself stays. The same again changes nothing. */
  public Answer delete(UUID report, UUID id) {
    return commands.once(
        id,
        "delete-damage-photo/" + report,
        "",
        () -> {
          store.find(report).orElseThrow(PhotoDesk::none);
          store.delete(report, caller.id(), clock.instant());
          return Answer.of(200, new Gone(report));
        });
  }

  private static Problem none() {
    return Problem.notFound("There is no photo with this report.");
  }

  private static String sha256(byte[] file) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(file));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
