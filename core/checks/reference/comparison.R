# Fits made-up comparisons of two ways with lme4 and nlme, apart from the program, asks R's power calculation which difference
# a plain comparison of two groups would show, and writes comparison.json beside this file. Run from the project's root with
# Debian's r-cran-lme4, r-cran-lmertest, r-cran-nlme and r-cran-jsonlite:
#   Rscript core/checks/reference/comparison.R
suppressPackageStartupMessages({ library(lme4); library(lmerTest); library(jsonlite) })

tight <- lmerControl(optimizer = "bobyqa", optCtrl = list(rhoend = 1e-10, maxfun = 1e5), calc.derivs = FALSE)

# Tests every four weeks; some lifters leave early and some tests are missing.
madeUp <- function(seed, lifters, weeks, leaves, missing) {
  set.seed(seed)
  rows <- expand.grid(week = weeks, i = seq_len(lifters))
  level <- rnorm(lifters, 5, 0.2); gain <- rnorm(lifters, 0.002, 0.004)
  rows$way <- rows$i %% 2
  rows$ln <- round(level[rows$i] + (gain[rows$i] + 0.0012 * rows$way) * rows$week + rnorm(nrow(rows), 0, 0.015), 5)
  rows$lifter <- sprintf("l%02d", rows$i)
  rows <- rows[!(rows$i %in% leaves & rows$week > 4), ]
  if (length(missing) > 0) rows <- rows[-missing, ]
  rows
}

case <- function(rows, atWeek, slopes) {
  fit <- lmerTest::lmer(if (slopes) ln ~ week * way + (week | lifter) else ln ~ week * way + (1 | lifter), rows, control = tight)
  beside <- nlme::lme(ln ~ week * way, random = if (slopes) ~ week | lifter else ~ 1 | lifter, data = rows,
    control = nlme::lmeControl(msTol = 1e-12, tolerance = 1e-10, msMaxIter = 500))
  at <- coef(summary(fit))["week:way", ]
  line <- unname(at["df"]); half <- qt(0.975, max(1, floor(line * 1.00001))) * at["Std. Error"]
  list(formula = deparse(formula(fit)), atWeek = atWeek,
    tests = data.frame(lifterId = rows$lifter, way = rows$way, week = rows$week, lnValue = rows$ln),
    difference = unname(atWeek * at["Estimate"]), standardError = unname(atWeek * at["Std. Error"]), degreesOfFreedom = line,
    low95 = unname(atWeek * (at["Estimate"] - half)), high95 = unname(atWeek * (at["Estimate"] + half)),
    nlme = list(difference = unname(atWeek * nlme::fixef(beside)["week:way"]),
      standardError = unname(atWeek * sqrt(diag(vcov(beside)))["week:way"])))
}

# Detectable with 80 % power at 5 %, both tails, by the noncentral t; the sum of two quantiles of the central t beside it.
power <- function(aWay, sd) {
  found <- power.t.test(n = aWay, sd = sd, sig.level = 0.05, power = 0.8, type = "two.sample", strict = TRUE, tol = 1e-12)
  list(aWay = aWay, sd = sd, detectable = found$delta,
    bySum = (qt(0.975, 2 * aWay - 2) + qt(0.8, 2 * aWay - 2)) * sd * sqrt(2 / aWay))
}

weeks <- c(0, 4, 8, 12)
cases <- list(
  whole = case(madeUp(21, 12, weeks, c(), c()), 12, TRUE),
  leaving = case(madeUp(12, 16, weeks, c(3, 8, 11), c(6, 21, 40)), 12, TRUE),
  twoTests = case(madeUp(13, 10, c(0, 12), c(), c()), 12, FALSE))

write_json(list(
  source = "R: lme4 lmer with lmerTest (Satterthwaite) and nlme lme; power.t.test of stats (noncentral t)",
  data = "made up in comparison.R: ln of a load by week, two ways",
  versions = list(R = paste(R.version$major, R.version$minor, sep = "."), lme4 = as.character(packageVersion("lme4")),
    lmerTest = as.character(packageVersion("lmerTest")), nlme = as.character(packageVersion("nlme"))),
  command = "Rscript core/checks/reference/comparison.R", retrieved = as.character(Sys.Date()),
  unit = "ln of the load; weeks",
  tolerance = "estimates, standard errors and ranges 1e-5 relative to the standard error (nlme 1e-3, it stops sooner); detectable differences 3 %, five times what the simulation is off by",
  cases = cases, power = list(power(4, 0.04), power(10, 0.04), power(20, 0.02))),
  "core/checks/reference/comparison.json", digits = 12, auto_unbox = TRUE, null = "null")
for (name in names(cases)) cat(name, format(unlist(cases[[name]][c("difference", "standardError", "degreesOfFreedom", "low95", "high95")]), digits = 6), format(unlist(cases[[name]]$nlme), digits = 6), "\n")
