package org.tapeline.stack.launch;

import java.lang.reflect.Method;
import java.lang.reflect.Proxy;

/**
 * Ctrl-C and the kill command as a call, instead of the end of the process. The database's library
 * stops its server in a shutdown hook, at the same time as everything else would stop; so that the
 * parts stop in their order, the hooks must not run at all. The class behind this is not part of
 * the platform's API, hence the reflection.
 */
final class Signals {
  private Signals() {}

  static void onStop(Runnable action) {
    try {
      Class<?> signal = Class.forName("sun.misc.Signal");
      Class<?> handler = Class.forName("sun.misc.SignalHandler");
      Object calling =
          Proxy.newProxyInstance(
              handler.getClassLoader(),
              new Class<?>[] {handler},
              (proxy, method, arguments) -> {
                action.run();
                return null;
              });
      Method handle = signal.getMethod("handle", signal, handler);
      for (String name : new String[] {"INT", "TERM", "HUP"}) {
        handle.invoke(null, signal.getConstructor(String.class).newInstance(name), calling);
      }
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("This Java runtime does not say when it is asked to stop", e);
    }
  }
}
