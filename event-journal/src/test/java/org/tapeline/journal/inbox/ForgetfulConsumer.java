package org.tapeline.journal.inbox;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.kafka.clients.consumer.Consumer;

/** A real consumer that dies at its first commits of offsets, after the effects were committed. */
final class ForgetfulConsumer {
  private ForgetfulConsumer() {}

  @SuppressWarnings("unchecked")
  static Consumer<String, byte[]> of(
      Consumer<String, byte[]> real, AtomicInteger commits, int forgets) {
    return (Consumer<String, byte[]>)
        Proxy.newProxyInstance(
            Consumer.class.getClassLoader(),
            new Class<?>[] {Consumer.class},
            (proxy, called, arguments) -> {
              if (called.getName().equals("commitSync") && commits.incrementAndGet() <= forgets) {
                throw new IllegalStateException("died before the offsets were committed");
              }
              try {
                return called.invoke(real, arguments);
              } catch (InvocationTargetException e) {
                throw e.getCause();
              }
            });
  }
}
