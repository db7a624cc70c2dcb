package org.tapeline.acceptance;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the mail catcher caught, read from its pages. */
final class Post {
  private static final Pattern ROW =
      Pattern.compile(
          "data-label=\"To\">(.*?)</td>.*?href=\"(/mailbox/[0-9]+)\">(.*?)</a>", Pattern.DOTALL);
  private static final HttpClient HTTP = HttpClient.newHttpClient();

  private Post() {}

  /** A mail; the path is that of its page. */
  record Mail(String to, String path, String subject) {
    /** The first attachment, as it arrived. */
    String attachment() {
      return page(path + "/attachments/0");
    }

    String page() {
      return page(path);
    }

    private static String page(String path) {
      return Post.page(path);
    }
  }

  static List<Mail> to(String address) {
    List<Mail> mails = new ArrayList<>();
    Matcher row = ROW.matcher(page("/mailbox"));
    while (row.find()) {
      if (row.group(1).contains(address)) {
        mails.add(new Mail(row.group(1), row.group(2), row.group(3)));
      }
    }
    return mails;
  }

  private static String page(String path) {
    try {
      return HTTP.send(
              HttpRequest.newBuilder(URI.create(Tapeline.address() + path)).build(),
              HttpResponse.BodyHandlers.ofString())
          .body();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }
}
