package org.tapeline.proof.faults.season;

import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tapeline.proof.faults.process.Part;
import org.tapeline.stack.mailbox.Mailbox;
import org.tapeline.stack.mailbox.StoredMail;

/** Guardians who open the link in a mail, confirm it or choose another slot. */
final class Families {
  private static final Pattern NOTICE = Pattern.compile("/notify/n/([A-Za-z0-9._~-]+)");
  private static final Pattern SLOTS = Pattern.compile("href=\"(/fitting/slot/[^\"]+)\"");
  private static final Pattern HAD = Pattern.compile("name=\"had\" value=\"([^\"]*)\"");
  private static final Pattern SLOT = Pattern.compile("name=\"slot\"[^>]*value=\"([^\"]+)\"");

  private final Path mails;

  /**
   * @param mails folder of the stack's mail catcher
   */
  Families(Path mails) {
    this.mails = mails;
  }

  void reply(Gate gate, Random random) throws Gate.Away {
    Optional<String> link = anyLink(random);
    if (link.isEmpty()) {
      return;
    }
    String page = "/notify/n/" + link.get();
    Matcher slots = SLOTS.matcher(gate.page(page));
    if (slots.find() && random.nextBoolean()) {
      choose(slots.group(1), gate, random);
    } else {
      UUID id = Ids.next(random);
      gate.send(
          Command.form(id, "notice confirmed", Part.NOTIFY, page + "/read", "commandId=" + id),
          random);
    }
  }

  private static void choose(String address, Gate gate, Random random) throws Gate.Away {
    String page = gate.page(address);
    Matcher had = HAD.matcher(page);
    List<String> free = new ArrayList<>();
    Matcher slot = SLOT.matcher(page);
    while (slot.find()) {
      free.add(slot.group(1));
    }
    if (free.isEmpty() || !had.find()) {
      return;
    }
    UUID id = Ids.next(random);
    String wanted = free.get(random.nextInt(free.size()));
    String body = "commandId=" + id + "&had=" + encoded(had.group(1)) + "&slot=" + encoded(wanted);
    gate.send(Command.form(id, "slot chosen", Part.FITTING, address, body), random);
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  /** Of the newest mails. */
  private Optional<String> anyLink(Random random) {
    try {
      if (Files.notExists(mails)) {
        return Optional.empty();
      }
      List<String> links =
          new Mailbox(mails)
              .all().stream()
                  .limit(60)
                  .map(StoredMail::text)
                  .map(NOTICE::matcher)
                  .filter(Matcher::find)
                  .map(found -> found.group(1))
                  .toList();
      return links.isEmpty()
          ? Optional.empty()
          : Optional.of(links.get(random.nextInt(links.size())));
    } catch (IOException e) {
      return Optional.empty();
    }
  }
}
