/* Discharges of packs (docs/discharge.md, "Equations", one well) by CVODE, the general solver of SUNDIALS: what the batch is
   measured against. Started again at every block of the demand, the ends found as its roots.

   discharge CASES RTOL: a line of numbers a case, as SolverCases.cs writes them; prints the time of each end, s, and to the
   standard error the processor time of all, s. */
#include <cvode/cvode.h>
#include <math.h>
#include <nvector/nvector_serial.h>
#include <stdio.h>
#include <stdlib.h>
#include <sunnonlinsol/sunnonlinsol_fixedpoint.h>
#include <time.h>

enum { MOST = 64, STATES = 4, ROOTS = 5 };

typedef struct {
    int groups, points, parts, blocks;
    double ampere_hours, r0, r1, tau1, r2, tau2, leads, activation, heat_capacity, conductance, capacity_factor,
        resistance_factor, cutoff, most_amperes, most_kelvin, floor, air, charge, kelvin, limit;
    double soc[MOST], volts[MOST], slope[MOST], part_kelvin[MOST], part[MOST];
    double seconds[MOST], watts[MOST], amperes[MOST], siemens[MOST];
    int block;
} Pack;

typedef struct { double volts, amperes, group_volts, open_volts, room, growth; } Point;

static double number(FILE *file) {
    double value;
    if (fscanf(file, "%lf", &value) != 1) {
        if (feof(file)) exit(0);
        fprintf(stderr, "a number is missing\n");
        exit(2);
    }
    return value;
}

static int count(FILE *file) {
    double value = number(file);
    if (!(value >= 0 && value <= MOST)) { fprintf(stderr, "at most %d points\n", MOST); exit(2); }
    return (int)value;
}

/* Fritsch and Carlson's monotone cubic: weighted harmonic means, three-point ends. */
static double end_slope(double h0, double h1, double d0, double d1) {
    double slope = ((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1);
    if (slope * d0 <= 0) return 0;
    return d0 * d1 <= 0 && fabs(slope) > 3 * fabs(d0) ? 3 * d0 : slope;
}

static void slopes(Pack *p) {
    double h[MOST], d[MOST];
    int n = p->points;
    for (int i = 0; i + 1 < n; i++) {
        h[i] = p->soc[i + 1] - p->soc[i];
        d[i] = (p->volts[i + 1] - p->volts[i]) / h[i];
    }
    for (int i = 1; i + 1 < n; i++) {
        double w1 = 2 * h[i] + h[i - 1], w2 = h[i] + 2 * h[i - 1];
        p->slope[i] = d[i - 1] * d[i] <= 0 ? 0 : (w1 + w2) / (w1 / d[i - 1] + w2 / d[i]);
    }
    p->slope[0] = end_slope(h[0], h[1], d[0], d[1]);
    p->slope[n - 1] = end_slope(h[n - 2], h[n - 3], d[n - 2], d[n - 3]);
}

static double open_volts(const Pack *p, double z) {
    int i = 0;
    if (z < 0) return p->volts[0] + p->slope[0] * z;
    while (i + 2 < p->points && z > p->soc[i + 1]) i++;
    double h = p->soc[i + 1] - p->soc[i], t = (z - p->soc[i]) / h, u = 1 - t;
    return (1 + 2 * t) * u * u * p->volts[i] + t * u * u * h * p->slope[i] + t * t * (3 - 2 * t) * p->volts[i + 1]
        - t * t * u * h * p->slope[i + 1];
}

static double usable(const Pack *p, double kelvin) {
    int n = p->parts;
    if (n == 0) return 1;
    if (kelvin <= p->part_kelvin[0]) return p->part[0];
    for (int i = 0; i + 1 < n; i++)
        if (kelvin <= p->part_kelvin[i + 1])
            return p->part[i] + (p->part[i + 1] - p->part[i]) * (kelvin - p->part_kelvin[i])
                / (p->part_kelvin[i + 1] - p->part_kelvin[i]);
    return p->part[n - 1];
}

static Point solve(const Pack *p, const double *y) {
    Point at;
    double grown = exp(p->activation / 8.314462618 * (1 / y[3] - 1 / 298.15));
    if (grown < p->floor) grown = p->floor;
    at.growth = grown * p->resistance_factor;
    at.open_volts = open_volts(p, y[0]);
    double e = p->groups * (at.open_volts - y[1] - y[2]), r = p->groups * p->r0 * at.growth + p->leads;
    double watts = p->watts[p->block], amperes = p->amperes[p->block], siemens = p->siemens[p->block];
    double a = 1 + siemens * r, b = e - amperes * r, root = b * b - 4 * a * watts * r;
    at.room = watts > 0 ? b - 2 * sqrt(a * watts * r) : 1;
    at.volts = (b + sqrt(root > 0 ? root : 0)) / (2 * a);
    at.amperes = amperes + siemens * at.volts + watts / at.volts;
    at.group_volts = at.open_volts - at.amperes * p->r0 * at.growth - y[1] - y[2];
    return at;
}

static int rates(realtype t, N_Vector state, N_Vector rate, void *data) {
    const Pack *p = data;
    const double *y = N_VGetArrayPointer(state);
    double *f = N_VGetArrayPointer(rate);
    Point at = solve(p, y);
    (void)t;
    f[0] = -at.amperes / (3600 * p->ampere_hours * p->capacity_factor * usable(p, y[3]));
    f[1] = (at.amperes * p->r1 * at.growth - y[1]) / p->tau1;
    f[2] = (at.amperes * p->r2 * at.growth - y[2]) / p->tau2;
    f[3] = (p->groups * at.amperes * (at.open_volts - at.group_volts) + at.amperes * at.amperes * p->leads
        - p->conductance * (y[3] - p->air)) / p->heat_capacity;
    return 0;
}

static void left(const Pack *p, const double *y, double *g) {
    Point at = solve(p, y);
    g[0] = at.room;
    g[1] = at.volts - p->cutoff;
    g[2] = y[0];
    g[3] = p->most_amperes - at.amperes;
    g[4] = p->most_kelvin - y[3];
}

static int limits(realtype t, N_Vector state, realtype *g, void *data) {
    (void)t;
    left(data, N_VGetArrayPointer(state), g);
    return 0;
}

static int is_over(const Pack *p, const double *y) {
    double g[ROOTS];
    left(p, y, g);
    return g[0] < 0 || g[1] <= 0 || g[2] <= 0 || g[3] <= 0 || g[4] <= 0;
}

static void read(FILE *file, Pack *p) {
    double *one[] = { &p->ampere_hours, &p->r0, &p->r1, &p->tau1, &p->r2, &p->tau2, &p->leads, &p->activation,
        &p->heat_capacity, &p->conductance, &p->capacity_factor, &p->resistance_factor, &p->cutoff, &p->most_amperes,
        &p->most_kelvin, &p->floor, &p->air, &p->charge, &p->kelvin, &p->limit };
    p->groups = (int)number(file);
    for (size_t i = 0; i < sizeof one / sizeof *one; i++) *one[i] = number(file);
    p->points = count(file);
    for (int i = 0; i < p->points; i++) { p->soc[i] = number(file); p->volts[i] = number(file); }
    p->parts = count(file);
    for (int i = 0; i < p->parts; i++) { p->part_kelvin[i] = number(file); p->part[i] = number(file); }
    p->blocks = count(file);
    for (int i = 0; i < p->blocks; i++) {
        p->seconds[i] = number(file);
        p->watts[i] = number(file);
        p->amperes[i] = number(file);
        p->siemens[i] = number(file);
    }
    slopes(p);
}

static double end_of(void *cvode, N_Vector state, Pack *p) {
    double *y = N_VGetArrayPointer(state), t = 0, until = 0;
    y[0] = p->charge; y[1] = y[2] = 0; y[3] = p->kelvin;
    for (p->block = 0; until < p->limit; p->block = (p->block + 1) % p->blocks) {
        if (is_over(p, y)) return t;
        until = fmin(until + p->seconds[p->block], p->limit);
        CVodeReInit(cvode, t, state);
        CVodeSetStopTime(cvode, until);
        int how = CVode(cvode, until, state, &t, CV_NORMAL);
        if (how == CV_ROOT_RETURN) return t;
        if (how < 0) { fprintf(stderr, "CVODE gave up: %d\n", how); exit(1); }
    }
    return t;
}

int main(int many, char **words) {
    FILE *file = many == 3 ? fopen(words[1], "r") : NULL;
    if (!file) { fprintf(stderr, "discharge CASES RTOL\n"); return 2; }
    double rtol = atof(words[2]);
    SUNContext context;
    SUNContext_Create(NULL, &context);
    N_Vector state = N_VNew_Serial(STATES, context), absolute = N_VNew_Serial(STATES, context);
    double *a = N_VGetArrayPointer(absolute);
    a[0] = rtol * 1e-2; a[1] = a[2] = rtol * 1e-2; a[3] = rtol;
    N_VConst(1, state);
    int cases = count(file) * 1000;
    cases += (int)number(file);
    Pack *packs = calloc((size_t)cases, sizeof *packs);
    double *ends = calloc((size_t)cases, sizeof *ends);
    for (int i = 0; i < cases; i++) read(file, packs + i);
    void *cvode = CVodeCreate(CV_ADAMS, context);
    CVodeInit(cvode, rates, 0, state);
    CVodeSVtolerances(cvode, rtol, absolute);
    CVodeSetNonlinearSolver(cvode, SUNNonlinSol_FixedPoint(state, 0, context));
    CVodeSetMaxNumSteps(cvode, 100000);
    CVodeRootInit(cvode, ROOTS, limits);
    clock_t begun = clock();
    for (int i = 0; i < cases; i++) {
        CVodeSetUserData(cvode, packs + i);
        ends[i] = end_of(cvode, state, packs + i);
    }
    double used = (double)(clock() - begun) / CLOCKS_PER_SEC;
    for (int i = 0; i < cases; i++) printf("%.9g\n", ends[i]);
    fprintf(stderr, "%.9g\n", used);
    return 0;
}
