package org.tapeline.stack.gateway;

import io.vertx.core.http.Cookie;
import io.vertx.core.http.CookieSameSite;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import java.util.Map;
import java.util.function.Predicate;

/** Signing in and out. The password is checked by a service; its cookie is good for all four. */
final class SignIn {
  private static final String COOKIE = "quarkus-credential";

  /** Cookies of people who signed in at an identity provider begin so. */
  private static final String PROVIDED = "q_session";

  /** As in deploy/openid-connect.properties. */
  private static final String PROVIDED_SIGN_OUT = "/sizing/sign-out";

  private final Pages pages;

  SignIn(Pages pages) {
    this.pages = pages;
  }

  /** Only for what a menu shows: whether the cookie is good a service decides. */
  static boolean hasCookie(HttpServerRequest request) {
    return cookie(request, name -> name.equals(COOKIE) || name.startsWith(PROVIDED));
  }

  private static boolean cookie(HttpServerRequest request, Predicate<String> named) {
    return request.cookies().stream().map(Cookie::getName).anyMatch(named);
  }

  void mount(Router router) {
    router
        .get("/sign-in")
        .handler(
            context ->
                pages.send(
                    context,
                    "sign-in",
                    Map.of("failed", context.request().getParam("failed") != null)));
    router.get("/sign-out").handler(SignIn::signOut);
  }

  /** Of an identity provider the services' own way out, which ends the session there too. */
  private static void signOut(RoutingContext context) {
    if (cookie(context.request(), name -> name.startsWith(PROVIDED))) {
      context.redirect(PROVIDED_SIGN_OUT);
      return;
    }
    context
        .response()
        .addCookie(
            Cookie.cookie(COOKIE, "")
                .setPath("/")
                .setMaxAge(0)
                .setHttpOnly(true)
                .setSameSite(CookieSameSite.STRICT));
    context.redirect("/sign-in");
  }
}
