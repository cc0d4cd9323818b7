package lyewright.web;

import io.javalin.config.RoutesConfig;

/** The pages of one feature. */
public interface Feature {

    /**
     * Says which addresses it answers.
     *
     * @param routes where to say it
     */
    void routes(RoutesConfig routes);
}
