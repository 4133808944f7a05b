# Fits mixed-effects regressions with lme4 (and one with nlme), apart from the program, and writes mixed.json beside this
# file. Run from the project's root with Debian's r-cran-lme4, r-cran-lmertest, r-cran-nlme and r-cran-jsonlite:
#   Rscript core/checks/reference/mixed.R
suppressPackageStartupMessages({ library(lme4); library(lmerTest); library(jsonlite) })

tight <- lmerControl(optimizer = "bobyqa", optCtrl = list(rhoend = 1e-10, maxfun = 1e5), calc.derivs = FALSE)

# Standard errors of each group's own line (fixed + random), from the full set of Henderson's equations.
ownLines <- function(fit) {
  X <- getME(fit, "X"); Z <- as.matrix(getME(fit, "Z")); Lambda <- as.matrix(getME(fit, "Lambda"))
  s2 <- sigma(fit)^2; ZL <- Z %*% Lambda
  C <- s2 * solve(rbind(cbind(crossprod(X), crossprod(X, ZL)), cbind(crossprod(ZL, X), crossprod(ZL) + diag(ncol(ZL)))))
  p <- ncol(X); full <- rbind(cbind(diag(p), matrix(0, p, ncol(ZL))), cbind(matrix(0, ncol(ZL), p), Lambda))
  C <- full %*% C %*% t(full)
  q <- length(fit@cnms[[1]]); groups <- levels(getME(fit, "flist")[[1]])
  effects <- as.matrix(ranef(fit)[[1]])
  lapply(seq_along(groups), function(i) {
    own <- p + (i - 1) * q + q
    list(group = groups[i], effects = as.numeric(effects[i, ]),
      lastSd = sqrt(C[p, p] + C[own, own] + 2 * C[p, own]))
  })
}

case <- function(formula, data, y, x, z, g, reml = TRUE) {
  fit <- lmerTest::lmer(formula, data, REML = reml, control = tight)
  v <- as.data.frame(VarCorr(fit)); sds <- v$sdcor[is.na(v$var2) & v$grp != "Residual"]
  list(method = if (reml) "reml" else "ml", formula = deparse(formula),
    values = data[[y]], fixed = unname(model.matrix(fit)), random = z, groups = as.character(data[[g]]),
    estimates = unname(fixef(fit)), standardErrors = unname(sqrt(diag(as.matrix(vcov(fit))))),
    degreesOfFreedom = if (reml) unname(coef(summary(fit))[, "df"]) else NULL,
    residualSd = sigma(fit), randomSds = sds, correlation = v$sdcor[!is.na(v$var2)],
    deviance = as.numeric(-2 * logLik(fit)), ownLines = ownLines(fit))
}

line <- function(x) unname(cbind(1, x))
sleep <- as.data.frame(sleepstudy)
ortho <- as.data.frame(nlme::Orthodont); ortho$girl <- as.numeric(ortho$Sex == "Female"); ortho$age8 <- ortho$age - 8
ortho$Subject <- as.character(ortho$Subject)

set.seed(20261125)
sizes <- c(1, 2, 3, 9, 4, 2, 6, 1, 5, 12, 3, 2)
made <- data.frame(g = rep(sprintf("g%02d", seq_along(sizes)), sizes))
made$x <- round(rnorm(nrow(made), 0.03, 0.04), 4)
made$equipped <- as.numeric(made$g %in% c("g02", "g04", "g07", "g11"))
slopes <- setNames(rnorm(12, 0.7, 0.4), unique(made$g)); lifts <- setNames(rnorm(12, 0.01, 0.01), unique(made$g))
made$y <- round(lifts[made$g] + (slopes[made$g] - 0.2 * made$equipped) * made$x + rnorm(nrow(made), 0, 0.012), 4)

cases <- list(
  sleepSlope = case(Reaction ~ Days + (Days | Subject), sleep, "Reaction", z = line(sleep$Days), g = "Subject"),
  sleepSlopeMl = case(Reaction ~ Days + (Days | Subject), sleep, "Reaction", z = line(sleep$Days), g = "Subject", reml = FALSE),
  orthodontIntercept = case(distance ~ girl * age8 + (1 | Subject), ortho, "distance", z = matrix(1, nrow(ortho)), g = "Subject"),
  orthodontSlope = case(distance ~ age8 + (age8 | Subject), ortho, "distance", z = line(ortho$age8), g = "Subject"),
  madeUpUnbalanced = case(y ~ x + (x | g), made, "y", z = line(made$x), g = "g"),
  madeUpSlopeAlone = case(y ~ equipped * x + (0 + x | g), made, "y", z = matrix(made$x), g = "g"),
  madeUpInterceptMl = case(y ~ equipped + x + (1 | g), made, "y", z = matrix(1, nrow(made)), g = "g", reml = FALSE))

beside <- nlme::lme(Reaction ~ Days, random = ~ Days | Subject, data = sleep,
  control = nlme::lmeControl(msTol = 1e-12, tolerance = 1e-10, opt = "optim", reltol = 1e-14))
write_json(list(
  source = "R: lme4 lmer, lmerTest (Satterthwaite), nlme lme; own-line standard errors from Henderson's equations",
  data = list(
    sleep = "sleepstudy of lme4: Belenky et al. 2003, J Sleep Res 12:1-12; ms and days",
    orthodont = "Orthodont of nlme: Potthoff & Roy 1964, Biometrika 51:313-326; mm and years from 8",
    madeUp = "made up in mixed.R, groups of 1 to 12"),
  versions = list(R = paste(R.version$major, R.version$minor, sep = "."), lme4 = as.character(packageVersion("lme4")),
    lmerTest = as.character(packageVersion("lmerTest")), nlme = as.character(packageVersion("nlme"))),
  command = "Rscript core/checks/reference/mixed.R", retrieved = as.character(Sys.Date()),
  unit = "as the data", tolerance = "estimates and standard errors 1e-5 relative; degrees of freedom 1 % before rounding down",
  nlmeSleepSlope = list(estimates = unname(nlme::fixef(beside)), standardErrors = unname(sqrt(diag(vcov(beside))))),
  cases = cases), "core/checks/reference/mixed.json", digits = 12, auto_unbox = TRUE, null = "null")
for (name in names(cases)) cat(name, format(cases[[name]]$estimates, digits = 8), "|", format(cases[[name]]$standardErrors, digits = 8), "|", format(cases[[name]]$degreesOfFreedom, digits = 5), "|", cases[[name]]$randomSds, cases[[name]]$correlation, "\n")
cat(format(nlme::fixef(beside), digits = 9), format(sqrt(diag(vcov(beside))), digits = 9), "\n")
