package rallywright.web.signin;

import jakarta.servlet.DispatcherType;
import java.util.ArrayList;
import java.util.List;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.HttpStatus;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AuthorizeHttpRequestsConfigurer;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.HttpStatusEntryPoint;
import org.springframework.security.web.authentication.LoginUrlAuthenticationEntryPoint;
import org.springframework.security.web.context.SecurityContextHolderFilter;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.security.web.header.writers.StaticHeadersWriter;
import org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher;
import org.springframework.security.web.util.matcher.AnyRequestMatcher;
import org.springframework.security.web.util.matcher.OrRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;

/** Who may open what, and the headers that keep a browser strict. */
@Configuration
class SafeHeaders {

  private static final String CONTENT_RULES =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src"
          + " 'self'; connect-src 'self'; manifest-src 'self'; worker-src 'self'; form-action"
          + " 'self'; base-uri 'none'; frame-ancestors 'none'";

  @Bean
  SecurityFilterChain rules(HttpSecurity http, SignedIn signedIn, List<Door> doors) {
    return http.authorizeHttpRequests(who -> open(who, doors))
        .addFilterBefore(new EndOutdatedSessions(signedIn), SecurityContextHolderFilter.class)
        .exceptionHandling(
            strangers ->
                strangers
                    .defaultAuthenticationEntryPointFor(
                        new HttpStatusEntryPoint(HttpStatus.UNAUTHORIZED), jsonOnly(doors))
                    .defaultAuthenticationEntryPointFor(
                        new LoginUrlAuthenticationEntryPoint("/sign-in"),
                        AnyRequestMatcher.INSTANCE))
        .csrf(tokens -> tokens.ignoringRequestMatchers(jsonOnly(doors)))
        .headers(SafeHeaders::strict)
        .requestCache(cache -> cache.disable())
        .logout(out -> out.logoutUrl("/sign-out").logoutSuccessUrl("/sign-in?left"))
        .build();
  }

  /** What a stranger needs to sign in. */
  @Bean
  Door signInDoor() {
    return new Door("/sign-in", Door.Who.EVERYBODY);
  }

  private static RequestMatcher jsonOnly(List<Door> doors) {
    List<RequestMatcher> matchers = new ArrayList<>();
    for (Door door : doors) {
      if (door.posts() == Door.Posts.JSON_ONLY) {
        matchers.add(PathPatternRequestMatcher.pathPattern(door.pattern()));
      }
    }
    return new OrRequestMatcher(matchers);
  }

  private static void open(
      AuthorizeHttpRequestsConfigurer<HttpSecurity>.AuthorizationManagerRequestMatcherRegistry who,
      List<Door> doors) {
    who.dispatcherTypeMatchers(DispatcherType.ERROR).permitAll();
    who.requestMatchers("/css/**", "/js/**", "/fonts/**", "/oncourt/**", "/favicon.svg")
        .permitAll();
    for (Door door : doors) {
      switch (door.who()) {
        case EVERYBODY -> who.requestMatchers(door.pattern()).permitAll();
        case COURT -> who.requestMatchers(door.pattern()).hasAnyRole("COACH", "COURT");
      }
    }
    who.anyRequest().hasRole("COACH");
  }

  /**
   * The library's own set and a few more. Strict transport is left out: a certificate of the house
   * on localhost would bind every other program of that name.
   */
  private static void strict(HeadersConfigurer<HttpSecurity> headers) {
    headers
        .contentSecurityPolicy(rules -> rules.policyDirectives(CONTENT_RULES))
        .referrerPolicy(policy -> policy.policy(ReferrerPolicy.NO_REFERRER))
        .httpStrictTransportSecurity(transport -> transport.disable())
        .addHeaderWriter(new StaticHeadersWriter("X-Robots-Tag", "noindex"))
        .addHeaderWriter(new StaticHeadersWriter("Cross-Origin-Opener-Policy", "same-origin"))
        .addHeaderWriter(new StaticHeadersWriter("Cross-Origin-Resource-Policy", "same-origin"));
  }
}
