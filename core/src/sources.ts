/**
 * Every published source that a number in Stave rests on.
 *
 * `read` says how we know it: "primary" read in the source itself, "secondary" in a restatement, "memory" not looked
 * up. "practice" is common practice without a source; "ours" is a decision of this project and no claim about the world.
 */
export interface Source {
  readonly cite: string;
  readonly read: "primary" | "secondary" | "memory" | "practice" | "ours";
}

export const SOURCES = {
  abramowitzStegun: {
    cite: "Abramowitz and Stegun 1964, Handbook of Mathematical Functions, 26.2.17",
    read: "memory",
  },
  acsm2001: {
    cite: "ACSM 2001, Appropriate intervention strategies for weight loss, Med Sci Sports Exerc 33:2145–2156, as reported",
    read: "secondary",
  },
  acsm2009: {
    cite: "Ratamess et al. 2009, Progression models in resistance training for healthy adults, Med Sci Sports Exerc 41:687–708",
    read: "primary",
  },
  acsm2009nutrition: {
    cite: "ACSM, ADA & DC 2009, Nutrition and athletic performance, protein 1.2–1.7 g/kg, as quoted by Phillips 2012",
    read: "primary",
  },
  acsm2016: {
    cite: "ACSM, AND & DC 2016, Nutrition and athletic performance, protein 1.2–2.0 g/kg, as reported by Egan 2016, Nutr Bull",
    read: "secondary",
  },
  acsm2026: {
    cite: "ACSM 2026, Resistance training prescription for muscle function, hypertrophy, and physical performance in healthy adults: an overview of reviews, Med Sci Sports Exerc, as reported",
    read: "secondary",
  },
  acsmContinuum: {
    cite: "Older ACSM-based continuum of repetition maxima and per cent of 1RM, as restated on a teaching page",
    read: "secondary",
  },
  acsmGetp10: {
    cite: "ACSM's Guidelines for Exercise Testing and Prescription, 10th ed. 2018, as restated",
    read: "secondary",
  },
  acsmGuidelines9: {
    cite: "American College of Sports Medicine 2013, Guidelines for Exercise Testing and Prescription, 9th ed., as quoted elsewhere",
    read: "secondary",
  },
  activityFactors: {
    cite: "Five activity factors on resting energy as many pages print them; no study behind them was found",
    read: "secondary",
  },
  ainsworth2011: {
    cite: "Ainsworth et al. 2011, Compendium of physical activities, Med Sci Sports Exerc 43:1575–1581",
    read: "secondary",
  },
  anderson2014: {
    cite: "Anderson et al. 2014, trunk holds of 116 adults of 18 to 55 years, St Catherine University",
    read: "primary",
  },
  areta2021: {
    cite: "Areta et al. 2021, Low energy availability: history, definition and evidence of its endocrine, metabolic and physiological effects",
    read: "primary",
  },
  awgs2019: {
    cite: "Asian Working Group for Sarcopenia 2019, consensus update, J Am Med Dir Assoc 2020",
    read: "secondary",
  },
  bakerNewton2004: {
    cite: "Baker & Newton 2004, An analysis of the ratio and relationship between upper body pressing and pulling strength, J Strength Cond Res 18:594–598",
    read: "primary",
  },
  ageGradedReturn: {
    cite: "Age-graded return to contact sports after concussion: under 19, 48 h between steps and 14 days without symptoms before contact",
    read: "memory",
  },
  bazValle2022: {
    cite: "Baz-Valle et al. 2022, A systematic review of the effects of different resistance training volumes on muscle hypertrophy, J Hum Kinet 81:199–210",
    read: "primary",
  },
  bell2023: {
    cite: "Bell et al. 2023, agreement among 34, 29 and 21 coaches on what a light week is and is for, Sports Med Open, doi 10.1186/s40798-023-00633-0",
    read: "primary",
  },
  bohannon2006: { cite: "Bohannon 2006, Single limb stance times, Top Geriatr Rehabil 22:70–77", read: "primary" },
  brawner2004: {
    cite: "Brawner et al. 2004, Predicting maximum heart rate among patients with coronary heart disease receiving β-blockers, Am Heart J 148:910–914",
    read: "primary",
  },
  brighamChase2014: {
    cite: "Brigham & Chase 2014, plank times of 168 students and 102 student athletes by quartile",
    read: "primary",
  },
  brozek1963: {
    cite: "Brožek et al. 1963, Densitometric analysis of body composition, Ann N Y Acad Sci 110:113–140",
    read: "secondary",
  },
  brzycki1993: { cite: "Brzycki 1993, Strength testing, JOPERD 64(1):88–90", read: "secondary" },
  bushman2020: {
    cite: "Bushman 2020, metabolic equations as in ACSM's Guidelines, 10th ed., table 6.3, ACSM's Health & Fitness J 24(3):6–10 and 24(4):5–8",
    read: "primary",
  },
  busso1994: {
    cite: "Busso, Candau & Lacour 1994, Fatigue and fitness modelled from the effects of training on performance, Eur J Appl Physiol 69:50–54",
    read: "secondary",
  },
  clarkeSkiba2013: {
    cite: "Clarke & Skiba 2013, Rationale and resources for teaching the mathematical modeling of athletic training and performance, Adv Physiol Educ 37:134–152",
    read: "secondary",
  },
  colberg2016: {
    cite: "Colberg et al. 2016, Physical activity/exercise and diabetes, Diabetes Care 39:2065–2079, table 1",
    read: "primary",
  },
  cooke2019: {
    cite: "Cooke et al. 2019, Body mass and femur length and repetitions to failure in the back squat, J Strength Cond Res 33:890–895",
    read: "primary",
  },
  cooper1968: { cite: "Cooper 1968, A means of assessing maximal oxygen intake, JAMA 203:201–204", read: "secondary" },
  csepPushUps: {
    cite: "Canadian Society for Exercise Physiology, push-ups without a time limit, table by age and sex",
    read: "secondary",
  },
  cunningham1980: {
    cite: "Cunningham 1980, A reanalysis of the factors influencing basal metabolic rate, Am J Clin Nutr 33:2372–2374",
    read: "secondary",
  },
  cunningham1991: {
    cite: "Cunningham 1991, Body composition as a determinant of energy expenditure, Am J Clin Nutr 54:963–969",
    read: "memory",
  },
  deLeva1996: {
    cite: "de Leva 1996, Adjustments to Zatsiorsky–Seluyanov's segment inertia parameters, J Biomech 29:1223–1230",
    read: "secondary",
  },
  durninWomersley1974: {
    cite: "Durnin & Womersley 1974, Body fat assessed from total body density and its estimation from skinfold thickness, Br J Nutr 32:77–97",
    read: "secondary",
  },
  ebben2011: {
    cite: "Ebben et al. 2011, Kinetic analysis of several variations of push-ups, J Strength Cond Res 25:2891–2894",
    read: "secondary",
  },
  elliottLadder2021: {
    cite: "Graded return to play after Elliott et al., Sports Health 14:460–465, table 1",
    read: "primary",
  },
  efron1979: { cite: "Efron 1979, Bootstrap methods: another look at the jackknife, Ann Stat 7:1–26", read: "memory" },
  epley1985: { cite: "Epley 1985, Poundage chart, Boyd Epley Workout", read: "secondary" },
  ewgsop2019: {
    cite: "Cruz-Jentoft et al. 2019, Sarcopenia: revised European consensus, Age Ageing 48:16–31",
    read: "secondary",
  },
  faoWhoUnu2001: {
    cite: "FAO/WHO/UNU 2001, Human energy requirements, report of an expert consultation, section 5.4",
    read: "primary",
  },
  fenwick2009: {
    cite: "Fenwick et al. 2009, Comparison of different rowing exercises, J Strength Cond Res 23:350–358",
    read: "primary",
  },
  foster1998: {
    cite: "Foster 1998, Monitoring training in athletes with reference to overtraining syndrome, Med Sci Sports Exerc 30:1164–1168",
    read: "primary",
  },
  fradkin2010: {
    cite: "Fradkin et al. 2010, Effects of warming-up on physical performance: a systematic review with meta-analysis, J Strength Cond Res 24:140–148",
    read: "primary",
  },
  garber2011: {
    cite: "Garber et al. 2011, Quantity and quality of exercise, Med Sci Sports Exerc 43:1334–1359",
    read: "secondary",
  },
  gattHeartRate: {
    cite: "Bluetooth SIG, heart rate measurement characteristic 0x2A37, definition of 2011",
    read: "primary",
  },
  gellish2007: {
    cite: "Gellish et al. 2007, Longitudinal modeling of the relationship between age and maximal heart rate, Med Sci Sports Exerc 39:822–829",
    read: "primary",
  },
  george1993: {
    cite: "George et al. 1993, VO2max estimation from a submaximal track jog, Med Sci Sports Exerc 25:401–406",
    read: "memory",
  },
  giangregorio2014: {
    cite: "Giangregorio et al. 2014, Too Fit To Fracture: exercise recommendations for individuals with osteoporosis, Osteoporos Int 25:821–835, as tabled in PMC5101068",
    read: "secondary",
  },
  gneitingRaftery2007: {
    cite: "Gneiting & Raftery 2007, Strictly proper scoring rules, prediction, and estimation, J Am Stat Assoc 102:359–378",
    read: "memory",
  },
  golding1986: { cite: "Golding, Myers & Sinning 1986, The Y's Way to Physical Fitness, 3rd ed.", read: "secondary" },
  gonzalezBadillo2010: {
    cite: "González-Badillo & Sánchez-Medina 2010, Movement velocity as a measure of loading intensity, Int J Sports Med 31:347–352 (constants from memory)",
    read: "memory",
  },
  gouvaliBoudolos2005: {
    cite: "Gouvali & Boudolos 2005, Dynamic and electromyographical analysis in variants of push-up exercise, J Strength Cond Res 19:146–151",
    read: "primary",
  },
  grgic2020: {
    cite: "Grgic et al. 2020, Test–retest reliability of the one-repetition maximum strength assessment, Sports Med Open 6:31",
    read: "primary",
  },
  gulati2010: {
    cite: "Gulati et al. 2010, Heart rate response to exercise stress testing in asymptomatic women, Circulation 122:130–137",
    read: "primary",
  },
  gulmez2017: {
    cite: "Suspension push-up loads by strap angle, J Strength Cond Res (Gulmez 2017 from memory), as reported",
    read: "secondary",
  },
  hackett2017: {
    cite: "Hackett et al. 2017, Accuracy in estimating repetitions to failure during resistance exercise, J Strength Cond Res 31:2162–2168",
    read: "primary",
  },
  haffTriplett2016: {
    cite: "Haff & Triplett (eds) 2016, Essentials of Strength Training and Conditioning, 4th ed.",
    read: "secondary",
  },
  halonen2024: {
    cite: "Halonen et al. 2024, ten weeks of training, ten weeks off, ten weeks of training, Scand J Med Sci Sports",
    read: "secondary",
  },
  halperin2022: {
    cite: "Halperin et al. 2022, Accuracy in predicting repetitions to task failure, Sports Med 52:377–390",
    read: "primary",
  },
  hammarstrom2020: {
    cite: "Open data of Hammarström et al. 2020, J Physiol 598:543–565: gain from first to second test, our own fit",
    read: "primary",
  },
  harrisBenedict1919: {
    cite: "Harris & Benedict 1919, A biometric study of basal metabolism in man",
    read: "secondary",
  },
  hartmannTunnemann: {
    cite: "Hartmann & Tünnemann, Fitness and Strength Training for All Sports: segment masses",
    read: "secondary",
  },
  hebertLosier2017: {
    cite: "Hébert-Losier et al. 2017, Normative values for the heel-raise test, 566 people, Physiotherapy",
    read: "secondary",
  },
  helme2020: {
    cite: "Helme et al. 2020, lead-foot share in the rear-foot-elevated split squat, J Strength Cond Res, doi 10.1519/JSC.0000000000003727",
    read: "primary",
  },
  helms2016: {
    cite: "Helms et al. 2016, Application of the repetitions in reserve-based rating of perceived exertion scale, Strength Cond J 38(4):42–49",
    read: "secondary",
  },
  herrmann2024: {
    cite: "Herrmann et al. 2024, 2024 adult compendium of physical activities, J Sport Health Sci 13:6–12",
    read: "secondary",
  },
  hl7PhysicalActivity: {
    cite: "HL7 US Physical Activity Implementation Guide 1.0, minutes per week, LOINC 82290-8",
    read: "primary",
  },
  hodgdonBeckett1984: {
    cite: "Hodgdon & Beckett 1984, Prediction of percent body fat for US Navy men and women, NHRC reports 84-11 and 84-29",
    read: "secondary",
  },
  hodgdonFriedl1999: {
    cite: "Hodgdon & Friedl 1999, Development of the DoD body composition estimation equations, NHRC TD 99-2B",
    read: "secondary",
  },
  hortobagyi1993: {
    cite: "Hortobágyi et al. 1993, two weeks without training in 12 power athletes: lowering strength of the thigh −12 %, bench −1.7 %, squat −0.9 %, Med Sci Sports Exerc 25:929–935, abstract as copied",
    read: "secondary",
  },
  hutchinsGearhart2010: {
    cite: "Hutchins & Gearhart 2010, Accuracy of 1RM prediction equations for the bench press and biceps curl, 27 trained men",
    read: "primary",
  },
  impellizzeri2020: {
    cite: "Impellizzeri et al. 2020, What role do chronic workloads play in the acute to chronic workload ratio?, Sports Med, doi 10.1007/s40279-020-01378-6",
    read: "primary",
  },
  intPound1959: { cite: "International yard and pound agreement 1959: 1 lb = 0.45359237 kg exactly", read: "memory" },
  ipaq2005: {
    cite: "Guidelines for data processing and analysis of the International Physical Activity Questionnaire, 2005",
    read: "primary",
  },
  iso8601: { cite: "ISO 8601, dates written YYYY-MM-DD", read: "memory" },
  iusca2021: {
    cite: "Schoenfeld et al. 2021, IUSCA position stand on hypertrophy, Int J Strength Cond 1(1)",
    read: "secondary",
  },
  jacksonPollock1978: {
    cite: "Jackson & Pollock 1978, Generalized equations for predicting body density of men, Br J Nutr 40:497–504",
    read: "secondary",
  },
  jacksonPollockWard1980: {
    cite: "Jackson, Pollock & Ward 1980, Generalized equations for predicting body density of women, Med Sci Sports Exerc 12:175–182",
    read: "secondary",
  },
  jager2017: {
    cite: "Jäger et al. 2017, ISSN position stand: protein and exercise, J Int Soc Sports Nutr 14:20",
    read: "primary",
  },
  kalman1960: {
    cite: "Kalman 1960, A new approach to linear filtering and prediction problems, J Basic Eng 82:35–45",
    read: "memory",
  },
  karvonen1957: {
    cite: "Karvonen, Kentala & Mustala 1957, The effects of training on heart rate, Ann Med Exp Biol Fenn 35:307–315",
    read: "secondary",
  },
  kline1987: {
    cite: "Kline et al. 1987, Estimation of VO2max from a one-mile track walk, Med Sci Sports Exerc 19:253–259",
    read: "secondary",
  },
  lander1985: { cite: "Lander 1985, Maximums based on reps, NSCA J 6(6):60–61", read: "secondary" },
  latella2020: {
    cite: "Latella et al. 2020, Long-term strength adaptation in 1,897 power lifters, J Strength Cond Res 34:2412–2418",
    read: "primary",
  },
  latin2001: {
    cite: "Latin et al. 2001, validity of the stepping equation, 55 people (PMID 11581567)",
    read: "primary",
  },
  liftingPressure2024: {
    cite: "Resistance training and blood pressure, Integr Blood Press Control 2024, 17:21–37, table 1",
    read: "primary",
  },
  lloyd2014: {
    cite: "Lloyd et al. 2014, Position statement on youth resistance training, Br J Sports Med 48:498–505, as restated",
    read: "secondary",
  },
  loe2013: {
    cite: "Loe et al. 2013, Aerobic capacity reference data in 3816 healthy men and women, PLoS One 8:e64319",
    read: "primary",
  },
  lombardi1989: { cite: "Lombardi 1989, Beginning Weight Training", read: "secondary" },
  lowerBodySplit2022: {
    cite: "Front Psychol 2022, 13:1010596, lower-body work of six exercises × 3 sets in one session or two (authors not noted)",
    read: "primary",
  },
  mayhew1992: {
    cite: "Mayhew et al. 1992, Relative muscular endurance performance as a predictor of bench press strength, J Appl Sport Sci Res 6:200–206",
    read: "secondary",
  },
  lally2010: {
    cite: "Lally et al. 2010, How are habits formed, Eur J Soc Psychol 40:998–1009",
    read: "primary",
  },
  mayhew1995: {
    cite: "Mayhew et al. 1995, Muscular endurance repetitions to predict bench press strength, J Sports Med Phys Fitness 35:108–113",
    read: "primary",
  },
  mcardle1972: {
    cite: "McArdle et al. 1972, Reliability and interrelationships between maximal oxygen intake and step-test scores in college women, Med Sci Sports 4:182–186",
    read: "secondary",
  },
  mcgill1999: {
    cite: "McGill, Childs & Liebenson 1999, Endurance times for low back stabilization exercises, Arch Phys Med Rehabil 80:941–944 (seconds from memory)",
    read: "memory",
  },
  mccrory2017: {
    cite: "McCrory et al. 2017, Consensus statement on concussion in sport (Berlin 2016), Br J Sports Med 51:838–847",
    read: "secondary",
  },
  melroseDawes2015: {
    cite: "Melrose & Dawes 2015, Resistance characteristics of the suspension training row, J Athl Enhanc",
    read: "primary",
  },
  mier2014: { cite: "Mier et al. 2014, Weight of body mass in push-ups, Int J Exerc Sci 7:161–168", read: "primary" },
  mifflin1990: {
    cite: "Mifflin et al. 1990, A new predictive equation for resting energy expenditure in healthy individuals, Am J Clin Nutr 51:241–247",
    read: "primary",
  },
  mifflinEvidence: {
    cite: "Evidence library of the US dietetic academy on the Mifflin–St Jeor equation: up to 9 % over and 21 % under in people with obesity",
    read: "primary",
  },
  mitter2022: {
    cite: "Mitter et al. 2022, reliability of repetitions to failure in the bench press of 24 trained people",
    read: "primary",
  },
  mottola2018: {
    cite: "Mottola et al. 2018, 2019 Canadian guideline for physical activity throughout pregnancy, Br J Sports Med 52:1339–1346",
    read: "secondary",
  },
  moranNavarro2017: {
    cite: "Morán-Navarro et al. 2017, Time course of recovery following resistance training leading or not to failure, Eur J Appl Physiol 117:2387–2399",
    read: "primary",
  },
  morton1990: {
    cite: "Morton, Fitz-Clarke & Banister 1990, Modeling human performance in running, J Appl Physiol 69:1171–1177",
    read: "memory",
  },
  morton2018: {
    cite: "Morton et al. 2018, protein supplementation and resistance training, Br J Sports Med 52:376–384",
    read: "primary",
  },
  nascimento2022: {
    cite: "Amarante do Nascimento et al. 2022, twelve weeks off after training in women over 60, J Strength Cond Res 36:1437–1444",
    read: "primary",
  },
  mountainGlucose2020: {
    cite: "Guidance on type 1 diabetes at altitude, PMC7510348, as noted: edges of 180 and 270 mg/dL; which bands they part is our reading",
    read: "secondary",
  },
  nscaChart: { cite: "NSCA training load chart, one page: repetitions and per cent of 1RM", read: "secondary" },
  nscaEssentialsTable: {
    cite: "Essentials of Strength Training and Conditioning, table of per cent of 1RM and repetitions allowed",
    read: "secondary",
  },
  newcombe1998: {
    cite: "Newcombe 1998, Two-sided confidence intervals for the single proportion: comparison of seven methods, Stat Med 17:857–872",
    read: "memory",
  },
  oconner1989: { cite: "O'Conner, Simmons & O'Shea 1989, Weight Training Today", read: "secondary" },
  ogasawara2013: {
    cite: "Ogasawara et al. 2013, three-week gaps in 24 weeks of training, Eur J Appl Physiol 113:975–985",
    read: "primary",
  },
  ours: { cite: "Our own choice, no source; a practising coach and a clinician have not signed it yet", read: "ours" },
  pelland2024: {
    cite: "Pelland et al. 2024, The resistance training dose response, SportRxiv; Sports Med 2025, doi 10.1007/s40279-025-02344-w",
    read: "primary",
  },
  peterson2003: {
    cite: "Peterson et al. 2003, Development and validation of skinfold-thickness prediction equations with a 4-compartment model, Am J Clin Nutr 77:1186–1191",
    read: "primary",
  },
  practice: { cite: "Common practice, no source", read: "practice" },
  reynolds2006: {
    cite: "Reynolds, Gordon & Robergs 2006, Prediction of 1RM strength from multiple repetition maximum testing, J Strength Cond Res 20:584–592",
    read: "primary",
  },
  rfc4180: { cite: "RFC 4180, Common Format and MIME Type for Comma-Separated Values (CSV) Files", read: "memory" },
  rfc5545: { cite: "RFC 5545, Internet Calendaring and Scheduling Core Object Specification", read: "memory" },
  ribeiro2020: {
    cite: "Ribeiro et al. 2020, warm-up sets at 40 and 80 % of the working load in squat and bench press, Int J Environ Res Public Health 17:6882",
    read: "primary",
  },
  richensCleather2014: {
    cite: "Richens & Cleather 2014, repetitions at given percentages of the leg press 1RM, Biol Sport 31:157–161",
    read: "primary",
  },
  riebe2015: {
    cite: "Riebe et al. 2015, Updating ACSM's recommendations for exercise preparticipation health screening, Med Sci Sports Exerc 47:2473–2479",
    read: "secondary",
  },
  rikliJones1999: {
    cite: "Rikli & Jones 1999, Functional fitness normative scores, J Aging Phys Act 7:162–181",
    read: "secondary",
  },
  robergsLandwehr2002: {
    cite: 'Robergs & Landwehr 2002, The surprising history of the "HRmax = 220 − age" equation, JEPonline 5(2):1–10',
    read: "primary",
  },
  rogerson2024: {
    cite: "Rogerson et al. 2024, Deloading practices in strength and physique sports, survey of 246 competitors, Sports Med Open, doi 10.1186/s40798-024-00691-y",
    read: "primary",
  },
  rozaShizgal1984: {
    cite: "Roza & Shizgal 1984, The Harris Benedict equation reevaluated, Am J Clin Nutr 40:168–182",
    read: "secondary",
  },
  salman2021: {
    cite: "Salman et al. 2021, Returning to physical activity after covid-19, BMJ 372:m4721",
    read: "primary",
  },
  schoenfeld2015tempo: {
    cite: "Schoenfeld, Ogborn & Krieger 2015, Effect of repetition duration on muscle hypertrophy, Sports Med 45:577–585",
    read: "primary",
  },
  schoenfeld2017load: {
    cite: "Schoenfeld et al. 2017, Strength and hypertrophy adaptations between low- vs. high-load training, J Strength Cond Res 31:3508–3523",
    read: "primary",
  },
  schoenfeld2017volume: {
    cite: "Schoenfeld, Ogborn & Krieger 2017, Dose-response relationship between weekly resistance training volume and increases in muscle mass, J Sports Sci 35:1073–1082",
    read: "primary",
  },
  schoenfeld2019frequency: {
    cite: "Schoenfeld, Grgic & Krieger 2019, How many times per week should a muscle be trained, J Sports Sci 37:1286–1295, as reported",
    read: "secondary",
  },
  schwellnus2022: {
    cite: "Schwellnus et al. 2022, IOC consensus on acute respiratory illness in athletes, Br J Sports Med 56:1066–1088",
    read: "secondary",
  },
  shimano2006: {
    cite: "Shimano et al. 2006, repetitions at percentages of the 1RM, J Strength Cond Res 20:819–823 (figures as restated by Cooke et al. 2019)",
    read: "secondary",
  },
  silbernagel2007: {
    cite: "Silbernagel et al. 2007, Continued sports activity, using a pain-monitoring model, Am J Sports Med 35:897–906; the edges of its zones from memory",
    read: "memory",
  },
  singer2024: {
    cite: "Singer et al. 2024, Give it a rest: inter-set rest interval duration and muscle hypertrophy, Front Sports Act Living 6:1429789",
    read: "primary",
  },
  siri1961: { cite: "Siri 1961, Body composition from fluid spaces and density", read: "primary" },
  steele2023: {
    cite: "Trials behind Steele et al. 2023, open extraction file: gains in 1RM of 78 controlled trials, our own fit",
    read: "primary",
  },
  strand2014: {
    cite: "Strand et al. 2014, Norms for an isometric muscle endurance test, J Hum Kinet 40:93–102",
    read: "primary",
  },
  suprak2011: {
    cite: "Suprak, Dawes & Stephenson 2011, The effect of position on the percentage of body mass supported during push-up variants, J Strength Cond Res 25:497–503",
    read: "secondary",
  },
  sydo2014: {
    cite: "Sydó et al. 2014, maximum heart rate of 19,013 people free of heart disease, Mayo Clin Proc",
    read: "primary",
  },
  tanaka2001: {
    cite: "Tanaka, Monahan & Seals 2001, Age-predicted maximal heart rate revisited, J Am Coll Cardiol 37:153–156",
    read: "primary",
  },
  trunkHolds2021: {
    cite: "Trunk holds of 400 adults, retest error of eight field tests, Sports Med Open 2021, doi 10.1186/s40798-021-00338-2",
    read: "primary",
  },
  turner2019: {
    cite: "Turner et al. 2019, Resistance exercise in type 1 diabetes, Sports Med Open 5:20",
    read: "primary",
  },
  unicode15: { cite: "The Unicode Standard, version 15: normalisation forms and default case folding", read: "memory" },
  wallace2010: {
    cite: "Wallace et al. 2010, Quantification of vertical ground reaction forces of popular bilateral plyometric exercises, J Strength Cond Res 24:207–212",
    read: "primary",
  },
  wathen1994: {
    cite: "Wathen 1994, Load assignment, in Baechle (ed.), Essentials of Strength Training and Conditioning",
    read: "secondary",
  },
  who2020: {
    cite: "Bull et al. 2020, World Health Organization guidelines on physical activity and sedentary behaviour, Br J Sports Med 54:1451–1462",
    read: "primary",
  },
  whoBmi: {
    cite: "World Health Organization, body mass index classification of adults (1995, 2000, 2004)",
    read: "primary",
  },
  whoLancet2004: {
    cite: "WHO expert consultation 2004, Appropriate body-mass index for Asian populations, Lancet 363:157–163",
    read: "primary",
  },
  whoWaist2008: {
    cite: "World Health Organization, Waist circumference and waist–hip ratio, report of an expert consultation 2008",
    read: "secondary",
  },
  williams2017: {
    cite: "Williams et al. 2017, Better way to determine the acute:chronic workload ratio?, Br J Sports Med 51:209–210",
    read: "primary",
  },
  wilson1927: {
    cite: "Wilson 1927, Probable inference, the law of succession, and statistical inference, J Am Stat Assoc 22:209–212",
    read: "memory",
  },
  winter2009: { cite: "Winter 2009, Biomechanics and Motor Control of Human Movement, table 4.1", read: "secondary" },
  zhu2010: {
    cite: "Zhu et al. 2010, Longitudinal changes in maximal heart rate from young to middle age, Med Sci Sports Exerc 42:1519–1527",
    read: "primary",
  },
  zourdos2016: {
    cite: "Zourdos et al. 2016, RIR-based rating of perceived exertion, J Strength Cond Res 30:267–275",
    read: "primary",
  },
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof SOURCES;
