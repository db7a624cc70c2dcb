package org.tapeline.stack.gateway;

import io.vertx.core.Handler;
import io.vertx.core.buffer.Buffer;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.tapeline.stack.mailbox.Mailbox;
import org.tapeline.stack.mailbox.StoredMail;

/** What the local mail catcher caught, to be read like a mailbox. Only in the local stack. */
final class MailboxPages {
  private final Mailbox mailbox;
  private final Pages pages;

  MailboxPages(Mailbox mailbox, Pages pages) {
    this.mailbox = mailbox;
    this.pages = pages;
  }

  void mount(Router router) {
    router.get("/mailbox").blockingHandler(this::list);
    router.get("/mailbox/:number").blockingHandler(with(this::show));
    router.get("/mailbox/:number/html").blockingHandler(with(MailboxPages::html));
    router.get("/mailbox/:number/attachments/:index").blockingHandler(with(this::attachment));
  }

  private void list(RoutingContext context) {
    try {
      pages.send(context, "mailbox", Map.of("mails", mailbox.all()));
    } catch (IOException e) {
      context.fail(e);
    }
  }

  private Handler<RoutingContext> with(BiConsumer<RoutingContext, StoredMail> action) {
    return context -> {
      String number = context.pathParam("number");
      Optional<StoredMail> mail =
          number.matches("[0-9]{1,15}") ? mailbox.one(Long.parseLong(number)) : Optional.empty();
      mail.ifPresentOrElse(found -> action.accept(context, found), context::next);
    };
  }

  private void show(RoutingContext context, StoredMail mail) {
    pages.send(context, "mail", Map.of("mail", mail));
  }

  /** In a frame of its own that may run nothing and reach nothing. */
  private static void html(RoutingContext context, StoredMail mail) {
    context
        .response()
        .putHeader("Content-Type", "text/html; charset=utf-8")
        .putHeader(
            "Content-Security-Policy", "sandbox; default-src 'none'; style-src 'unsafe-inline'")
        .end(mail.html());
  }

  private void attachment(RoutingContext context, StoredMail mail) {
    String index = context.pathParam("index");
    if (!index.matches("[0-9]{1,3}") || Integer.parseInt(index) >= mail.attachments().size()) {
      context.next();
      return;
    }
    StoredMail.Attachment attachment = mail.attachments().get(Integer.parseInt(index));
    String name = attachment.name().replaceAll("[^A-Za-z0-9._-]", "_");
    context
        .response()
        .putHeader("Content-Type", attachment.type())
        .putHeader("Content-Disposition", "attachment; filename=\"" + name + "\"")
        .end(Buffer.buffer(attachment.content()));
  }
}
