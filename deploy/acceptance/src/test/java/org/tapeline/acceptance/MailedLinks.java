package org.tapeline.acceptance;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The links of a mail to a family, and what its reader does with them. */
final class MailedLinks {
  private static final HttpClient HTTP = HttpClient.newHttpClient();
  private final String mail;

  private MailedLinks(String mail) {
    this.mail = mail;
  }

  static MailedLinks ofTheNewestTo(String address) {
    List<Post.Mail> mails = Post.to(address);
    if (mails.isEmpty()) {
      throw new IllegalStateException("No mail to " + address);
    }
    return new MailedLinks(mails.getFirst().page());
  }

  /** The token of the notice's page. */
  String notice() {
    return found("/notify/n/([A-Za-z0-9_-]+)", mail);
  }

  /** The token of the page on which the reader says how to be written to. */
  String wishes() {
    return found("/notify/c/([A-Za-z0-9_-]+)", mail);
  }

  /** The token of the page with the free slots. */
  String slot() {
    return found("/fitting/slot/([A-Za-z0-9_-]+)", page());
  }

  String page() {
    return send(request("/notify/n/" + notice()).GET().build());
  }

  void askForACall() {
    send(
        request("/notify/n/" + notice() + "/help")
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString("commandId=" + UUID.randomUUID()))
            .build());
  }

  static String found(String pattern, String text) {
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    if (!matcher.find()) {
      throw new IllegalStateException("There is no " + pattern + " in: " + text);
    }
    return matcher.group(1);
  }

  private static HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create(Tapeline.address() + path));
  }

  private static String send(HttpRequest request) {
    try {
      return HTTP.send(request, HttpResponse.BodyHandlers.ofString()).body();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }
}
