// Written by `npm run compile` from shared/evidence/evidence.json. Change that, not this.
import type { Citation } from './citation.js';

export const evidence: readonly Citation[] = [
  {
    id: 'C11',
    cite: 'Bosquet L, Montpetit J, Arvisais D, Mujika I. Effects of Tapering on Performance: A Meta-Analysis. Med Sci Sports Exerc 2007;39(8):1358–1365',
    doi: '10.1249/mss.0b013e31806010e0',
  },
  {
    id: 'C13',
    cite: 'Wang Z, Wang Y, Gao W, Zhong Y. Effects of tapering on performance in endurance athletes: A systematic review and meta-analysis. PLoS ONE 2023;18(5):e0282838',
    doi: '10.1371/journal.pone.0282838',
  },
  {
    id: 'A18',
    cite: 'Schumann M, Feuerbacher JF, Sunkeler M, et al. Compatibility of Concurrent Aerobic and Strength Training for Skeletal Muscle Size and Function. Sports Med 2022;52:601–612',
    doi: '10.1007/s40279-021-01587-7',
  },
  {
    id: 'A19',
    cite: 'Doma K, Deakin GB. The effects of strength training and endurance training order on running economy and performance. Appl Physiol Nutr Metab 2013;38:651–656',
    doi: '10.1139/apnm-2012-0362',
  },
  {
    id: 'A20',
    cite: 'Doma K, Deakin GB. The Effects of Combined Strength and Endurance Training on Running Performance the Following Day. Int J Sport Health Sci 2013;11:1–9',
    doi: '10.5432/ijshs.201230',
  },
  {
    id: 'A22',
    cite: 'Doma K, Deakin GB, Schumann M, Bentley DJ. Training Considerations for Optimising Endurance Development: An Alternate Concurrent Training Perspective. Sports Med 2019;49:669–682',
    doi: '10.1007/s40279-019-01072-2',
  },
  {
    id: 'A23',
    cite: 'Robineau J, Babault N, Piscione J, Lacome M, Bigard AX. Specific Training Effects of Concurrent Aerobic and Strength Exercises Depend on Recovery Duration. J Strength Cond Res 2016;30(3):672–683',
    doi: '10.1519/JSC.0000000000000798',
  },
  {
    id: 'A24',
    cite: 'Gao J, Yu L. Effects of concurrent training sequence on VO2max and lower limb strength performance. Front Physiol 2023;14:1072679',
    doi: '10.3389/fphys.2023.1072679',
  },
  {
    id: 'A25',
    cite: 'Spiering BA, Mujika I, Sharp MA, Foulis SA. Maintaining Physical Performance: The Minimal Dose of Exercise Needed to Preserve Endurance and Strength Over Time. J Strength Cond Res 2021;35(5):1449–1458',
    doi: '10.1519/JSC.0000000000003964',
  },
  {
    id: 'sainte-lague',
    cite: 'Balinski ML, Young HP. Fair Representation: Meeting the Ideal of One Man, One Vote. 2nd ed. Brookings 2001; Sainte-Laguë A. Ann Sci École Norm Sup 1910;27:529–542',
    doi: null,
  },
  {
    id: 'C01',
    cite: 'Buist I, Bredeweg SW, van Mechelen W, Lemmink KAPM, Pepping GJ, Diercks RL. No effect of a graded training program on the number of running-related injuries in novice runners. Am J Sports Med 36(1):33–39 (2008)',
    doi: '10.1177/0363546507307505',
  },
  {
    id: 'C02',
    cite: 'Nielsen RO, Parner ET, Nohr EA, Sorensen H, Lind M, Rasmussen S. Excessive Progression in Weekly Running Distance and Risk of Running-Related Injuries: An Association Which Varies According to Type of Injury. J Orthop Sports Phys Ther 44(10):739–747 (2014)',
    doi: '10.2519/jospt.2014.5164',
  },
  {
    id: 'C03',
    cite: 'Damsted C, Glad S, Nielsen RO, Sorensen H, Malisoux L. Is there evidence for an association between changes in training load and running-related injuries? A systematic review. Int J Sports Phys Ther 13(6):931–942 (2018)',
    doi: null,
  },
  {
    id: 'C04',
    cite: 'Damsted C, Parner ET, Sorensen H, Malisoux L, Hulme A, Nielsen RO. The Association Between Changes in Weekly Running Distance and Running-Related Injury: Preparing for a Half Marathon. J Orthop Sports Phys Ther 49(4):230–238 (2019)',
    doi: null,
  },
  {
    id: 'C05',
    cite: 'Schuster Brandt Frandsen J, Hulme A, Parner ET, et al. How much running is too much? Identifying high-risk running sessions in a 5200-person cohort study. Br J Sports Med 59(17):1203–1210 (2025)',
    doi: '10.1136/bjsports-2024-109380',
  },
  {
    id: 'C12',
    cite: 'Mujika I, Padilla S. Scientific Bases for Precompetition Tapering Strategies. Med Sci Sports Exerc 35(7):1182–1187 (2003)',
    doi: '10.1249/01.MSS.0000074448.73931.11',
  },
  {
    id: 'C14',
    cite: 'Mujika I, Padilla S. Detraining: Loss of Training-Induced Physiological and Performance Adaptations. Part I. Sports Med 30(2):79–87 (2000)',
    doi: '10.2165/00007256-200030020-00002',
  },
  {
    id: 'C16',
    cite: 'Mujika I, Padilla S. Detraining: Loss of Training-Induced Physiological and Performance Adaptations. Part II. Sports Med 30(3):145–154 (2000)',
    doi: '10.2165/00007256-200030030-00001',
  },
  {
    id: 'C17',
    cite: 'Neufer PD. The Effect of Detraining and Reduced Training on the Physiological Adaptations to Aerobic Exercise Training. Sports Med 8(5):302–321 (1989)',
    doi: '10.2165/00007256-198908050-00004',
  },
  {
    id: 'C18',
    cite: 'Rogerson D, Nolan D, Androulakis Korakakis P, Immonen V, Wolf M, Bell L. Deloading Practices in Strength and Physique Sports: A Cross-sectional Survey. Sports Med Open 10:26 (2024)',
    doi: '10.1186/s40798-024-00691-y',
  },
  {
    id: 'C19',
    cite: 'Bell L, Strafford BW, Coleman M, Androulakis Korakakis P, Nolan D. Integrating Deloading into Strength and Physique Sports Training Programmes: An International Delphi Consensus Approach. Sports Med Open 9:87 (2023)',
    doi: '10.1186/s40798-023-00633-0',
  },
  {
    id: 'C20',
    cite: 'Bompa TO. Periodization: Theory and Methodology of Training. Champaign: Human Kinetics (1999)',
    doi: null,
  },
  {
    id: 'C21',
    cite: 'Matveyev LP. Fundamentals of Sports Training. Moscow: Fizkultura i Sport 1977 (English 1981)',
    doi: null,
  },
  {
    id: 'riegel',
    cite: 'Riegel PS. Athletic records and human endurance. American Scientist 1981;69(3):285–290. PMID 7235349',
    doi: null,
  },
  {
    id: 'dg',
    cite: 'Daniels J, Gilbert J. Oxygen Power: Performance Tables for Distance Runners. Tempe, AZ: authors; 1979',
    doi: null,
  },
  {
    id: 'vickers',
    cite: 'Vickers AJ, Vertosick EA. An empirical study of race times in recreational endurance runners. BMC Sports Sci Med Rehabil 2016;8:26',
    doi: '10.1186/s13102-016-0052-y',
  },
  {
    id: 'karvonen',
    cite: 'Karvonen MJ, Kentala E, Mustala O. The effects of training on heart rate. Ann Med Exp Biol Fenn 1957;35(3):307–315',
    doi: null,
  },
  {
    id: 'tanaka',
    cite: 'Tanaka H, Monahan KD, Seals DR. Age-predicted maximal heart rate revisited. J Am Coll Cardiol 2001;37:153–156',
    doi: '10.1016/S0735-1097(00)01054-8',
  },
  {
    id: 'gellish',
    cite: 'Gellish RL, Goslin BR, Olson RE, et al. Longitudinal modeling of the relationship between age and maximal heart rate. Med Sci Sports Exerc 2007;39(5):822–829',
    doi: '10.1097/mss.0b013e31803349c6',
  },
  {
    id: 'robergs',
    cite: 'Robergs RA, Landwehr R. The surprising history of the “HRmax = 220 − age” equation. JEPonline 2002;5(2):1–10',
    doi: null,
  },
  {
    id: 'garber',
    cite: 'Garber CE, Blissmer B, Deschenes MR, et al. Quantity and quality of exercise for developing and maintaining cardiorespiratory, musculoskeletal, and neuromotor fitness in apparently healthy adults. ACSM position stand. Med Sci Sports Exerc 2011;43(7):1334–1359',
    doi: '10.1249/MSS.0b013e318213fefb',
  },
  {
    id: 'acsm',
    cite: 'ACSM’s Guidelines for Exercise Testing and Prescription, 10th ed. Wolters Kluwer 2018, Table 6.3; Bushman BA. Metabolic Calculations in Action. ACSM Health Fit J 2020;24(3):6–10 and 24(4):5–8',
    doi: '10.1249/FIT.0000000000000562',
  },
  {
    id: 'herrmann',
    cite: 'Herrmann SD, Willis EA, Ainsworth BE, et al. 2024 Adult Compendium of Physical Activities: A third update of the energy costs of human activities. J Sport Health Sci 2024;13(1):6–12',
    doi: '10.1016/j.jshs.2023.10.010',
  },
  {
    id: 'B01',
    cite: 'Seiler S. What is Best Practice for Training Intensity and Duration Distribution in Endurance Athletes? Int J Sports Physiol Perform 2010;5:276–291',
    doi: '10.1123/ijspp.5.3.276',
  },
  {
    id: 'B02',
    cite: 'Seiler S, Tønnessen E. Intervals, Thresholds, and Long Slow Distance: the Role of Intensity and Duration in Endurance Training. Sportscience 2009;13:32–53',
    doi: null,
  },
  {
    id: 'B12',
    cite: 'Casado A, González-Mohíno F, González-Ravé JM, Foster C. Training Periodization, Methods, Intensity Distribution, and Volume in Highly Trained and Elite Distance Runners: A Systematic Review. Int J Sports Physiol Perform 2022;17(6):820–833',
    doi: '10.1123/ijspp.2021-0435',
  },
  {
    id: 'A01',
    cite: 'Ratamess NA, Alvar BA, Evetoch TK, Housh TJ, Kibler WB, Kraemer WJ, Triplett NT (ACSM). Progression Models in Resistance Training for Healthy Adults (position stand). Med Sci Sports Exerc 41(3):687–708 (2009)',
    doi: '10.1249/MSS.0b013e3181915670',
  },
  {
    id: 'A02',
    cite: 'Ratamess NA, Alvar BA, Evetoch TK, Housh TJ, Kibler WB, Kraemer WJ, Triplett NT (ACSM). Progression Models in Resistance Training for Healthy Adults (position stand). Med Sci Sports Exerc 41(3):687–708 (2009)',
    doi: '10.1249/MSS.0b013e3181915670',
  },
  {
    id: 'A11',
    cite: 'Blagrove RC, Howatson G, Hayes PR. Effects of Strength Training on the Physiological Determinants of Middle- and Long-Distance Running Performance: A Systematic Review. Sports Med 48(5):1117–1149 (2018)',
    doi: '10.1007/s40279-017-0835-7',
  },
  {
    id: 'A12',
    cite: 'Balsalobre-Fernandez C, Santos-Concejero J, Grivas GV. Effects of Strength Training on Running Economy in Highly Trained Runners. J Strength Cond Res 30(8):2361–2368 (2016)',
    doi: '10.1519/JSC.0000000000001316',
  },
  {
    id: 'A13',
    cite: 'Denadai BS, de Aguiar RA, de Lima LCR, Greco CC, Caputo F. Explosive Training and Heavy Weight Training are Effective for Improving Running Economy in Endurance Athletes. Sports Med 47(3):545–554 (2017)',
    doi: '10.1007/s40279-016-0604-z',
  },
  {
    id: 'A15',
    cite: "Llanos-Lagos C, Ramirez-Campillo R, Moran J, Saez de Villarreal E. Effect of Strength Training Programs in Middle- and Long-Distance Runners' Economy at Different Running Speeds. Sports Med 54(4):895–932 (2024)",
    doi: '10.1007/s40279-023-01978-y',
  },
  {
    id: 'A21',
    cite: 'Doma K, Deakin GB. The Acute Effect of Concurrent Training on Running Performance Over 6 Days. Res Q Exerc Sport 86(4):387–396 (2015)',
    doi: '10.1080/02701367.2015.1053104',
  },
  {
    id: 'E14',
    cite: 'Faigenbaum AD, Kraemer WJ, Blimkie CJR, Jeffreys I, Micheli LJ, Nitka M, Rowland TW. Youth Resistance Training: Updated Position Statement Paper from the NSCA. J Strength Cond Res 23(5):S60-S79 (2009)',
    doi: '10.1519/JSC.0b013e31819df407',
  },
  {
    id: 'E19',
    cite: 'World Health Organization; Bull FC et al. World Health Organization 2020 guidelines on physical activity and sedentary behaviour. Br J Sports Med 54:1451–1462 (2020)',
    doi: '10.1136/bjsports-2020-102955',
  },
  { id: 'epley', cite: 'Epley B. Poundage chart. Boyd Epley Workout. Lincoln 1985', doi: null },
  {
    id: 'brzycki',
    cite: 'Brzycki M. Strength testing: predicting a one-rep max from reps-to-fatigue. J Phys Educ Recreat Dance 1993;64(1):88–90',
    doi: '10.1080/07303084.1993.10606684',
  },
  {
    id: 'load-table',
    cite: 'Sheppard JM, Triplett NT. Program design for resistance training. In: Haff GG, Triplett NT (eds). Essentials of Strength Training and Conditioning. 4th ed. Human Kinetics 2016, ch. 17',
    doi: null,
  },
  {
    id: 'set-times',
    cite: 'Schoenfeld BJ, Contreras B, Krieger J, et al. Resistance Training Volume Enhances Muscle Hypertrophy but Not Strength in Trained Men. Med Sci Sports Exerc 2019;51(1):94–103',
    doi: '10.1249/MSS.0000000000001764',
  },
  {
    id: 'A04',
    cite: 'Bull FC, Al-Ansari SS, Biddle S, et al. World Health Organization 2020 guidelines on physical activity and sedentary behaviour. Br J Sports Med 54:1451–1462 (2020)',
    doi: '10.1136/bjsports-2020-102955',
  },
  {
    id: 'A05',
    cite: 'World Health Organization. WHO guidelines on physical activity and sedentary behaviour. Geneva: WHO, ISBN 978-92-4-001512-8 (2020)',
    doi: null,
  },
  {
    id: 'A06',
    cite: 'US Department of Health and Human Services. Physical Activity Guidelines for Americans, 2nd edition. Washington DC: HHS (2018)',
    doi: null,
  },
  {
    id: 'A07',
    cite: 'Lauersen JB, Bertelsen DM, Andersen LB. The effectiveness of exercise interventions to prevent sports injuries: a systematic review and meta-analysis of RCTs. Br J Sports Med 48:871–877 (2014)',
    doi: '10.1136/bjsports-2013-092538',
  },
  {
    id: 'A08',
    cite: 'Lauersen JB, Andersen TE, Andersen LB. Strength training as superior, dose-dependent and safe prevention of acute and overuse sports injuries. Br J Sports Med 52(24):1557–1563 (2018)',
    doi: '10.1136/bjsports-2018-099078',
  },
  {
    id: 'A09',
    cite: 'Wu H, Brooke-Wavell K, Fong DTP, Paquette MR, Blagrove RC. Do Exercise-Based Prevention Programs Reduce Injury in Endurance Runners? A Systematic Review and Meta-Analysis. Sports Med 54(5):1249–1267 (2024)',
    doi: '10.1007/s40279-024-01993-7',
  },
  {
    id: 'A10',
    cite: 'Blagrove RC, Brown N, Howatson G, Hayes PR. Strength and Conditioning Habits of Competitive Distance Runners. J Strength Cond Res 34(5):1392–1399 (2020)',
    doi: '10.1519/JSC.0000000000002261',
  },
  {
    id: 'B05',
    cite: 'Esteve-Lanao J, Foster C, Seiler S, Lucia A. Impact of training intensity distribution on performance in endurance athletes. J Strength Cond Res 21(3):943–949 (2007)',
    doi: '10.1519/R-19725.1',
  },
  {
    id: 'B06',
    cite: 'Esteve-Lanao J, San Juan AF, Earnest CP, Foster C, Lucia A. How Do Endurance Runners Actually Train? Relationship with Competition Performance. Med Sci Sports Exerc 37(3):496–504 (2005)',
    doi: '10.1249/01.MSS.0000155393.78744.86',
  },
  {
    id: 'B07',
    cite: 'Munoz I, Seiler S, Bautista J, Espana J, Larumbe E, Esteve-Lanao J. Does Polarized Training Improve Performance in Recreational Runners? Int J Sports Physiol Perform 9:265–272 (2014)',
    doi: '10.1123/ijspp.2012-0350',
  },
  {
    id: 'B08',
    cite: 'Festa L, Tarperi C, Skroce K, La Torre A, Schena F. Effects of Different Training Intensity Distribution in Recreational Runners. Front Sports Act Living 1:70 (2020)',
    doi: '10.3389/fspor.2019.00070',
  },
  {
    id: 'B09',
    cite: "Silva Oliveira P, Boppre G, Fonseca H. Comparison of Polarized Versus Other Types of Endurance Training Intensity Distribution on Athletes' Endurance Performance. Sports Med 54:2071–2095 (2024)",
    doi: '10.1007/s40279-024-02034-z',
  },
  {
    id: 'B10',
    cite: 'Rosenblat MA, Watt JA, Arnold JI, Treff G, Sandbakk OB, Esteve-Lanao J, et al. Which Training Intensity Distribution Intervention will Produce the Greatest Improvements in Maximal Oxygen Uptake and Time-Trial Performance in Endurance Athletes? Sports Med 55(3):621–639 (2025)',
    doi: null,
  },
  {
    id: 'B11',
    cite: 'Haugen T, Sandbakk O, Seiler S, Tonnessen E. The Training Characteristics of World-Class Distance Runners. Sports Med Open 8:46 (2022)',
    doi: '10.1186/s40798-022-00438-7',
  },
  {
    id: 'D01',
    cite: 'Foster C. Monitoring training in athletes with reference to overtraining syndrome. Med Sci Sports Exerc 30(7):1164–1168 (1998)',
    doi: '10.1097/00005768-199807000-00023',
  },
  {
    id: 'D02',
    cite: 'Foster C. Monitoring training in athletes with reference to overtraining syndrome. Med Sci Sports Exerc 30(7):1164–1168 (1998), p. 1167',
    doi: null,
  },
  {
    id: 'D03',
    cite: 'Foster C, Florhaug JA, Franklin J, Gottschall L, Hrovatin LA, Parker S, Doleshal P, Dodge C. A New Approach to Monitoring Exercise Training. J Strength Cond Res 15(1):109–115 (2001)',
    doi: '10.1519/00124278-200102000-00019',
  },
  {
    id: 'D06',
    cite: 'Wallace LK, Slattery KM, Impellizzeri FM, Coutts AJ. Establishing the Criterion Validity and Reliability of Common Methods for Quantifying Training Load. J Strength Cond Res 28(8):2330–2337 (2014)',
    doi: '10.1519/JSC.0000000000000416',
  },
  {
    id: 'D10',
    cite: 'Williams S, West S, Cross MJ, Stokes KA. Better way to determine the acute:chronic workload ratio? Br J Sports Med 51(3):209–210 (2017)',
    doi: '10.1136/bjsports-2016-096589',
  },
  {
    id: 'D11',
    cite: 'Menaspa P. Are rolling averages a good way to assess training load for injury prevention? Br J Sports Med 51(7):618–619 (2017)',
    doi: '10.1136/bjsports-2016-096131',
  },
  {
    id: 'D12',
    cite: 'Lolli L, Batterham AM, Hawkins R, Kelly DM, Strudwick AJ, Thorpe R, Gregson W, Atkinson G. Mathematical coupling causes spurious correlation within the conventional acute-to-chronic workload ratio calculations. Br J Sports Med 53(15):921–922 (2019)',
    doi: '10.1136/bjsports-2017-098110',
  },
  {
    id: 'D13',
    cite: 'Impellizzeri FM, Woodcock S, Coutts AJ, Fanchini M, McCall A, Vigotsky AD. What Role Do Chronic Workloads Play in the Acute to Chronic Workload Ratio? Time to Dismiss ACWR and Its Underlying Theory. Sports Med 51:581–592 (2021)',
    doi: '10.1007/s40279-020-01378-6',
  },
  {
    id: 'D14',
    cite: 'Impellizzeri FM, Tenan MS, Kempton T, Novak A, Coutts AJ. Acute:Chronic Workload Ratio: Conceptual Issues and Fundamental Pitfalls. Int J Sports Physiol Perform 15(6):907–913 (2020)',
    doi: '10.1123/ijspp.2019-0864',
  },
  {
    id: 'D19',
    cite: 'Soligard T, Schwellnus M, Alonso JM, et al. How much is too much? (Part 1) IOC consensus statement on load in sport and risk of injury. Br J Sports Med 50(17):1030–1041 (2016)',
    doi: '10.1136/bjsports-2016-096581',
  },
  {
    id: 'D21',
    cite: 'Midoglu C, Winther AK, Boeker M, et al. A large-scale multivariate soccer athlete health, performance, and position monitoring dataset. Sci Data 11 (2024)',
    doi: '10.1038/s41597-024-03386-x',
  },
  {
    id: 'D22',
    cite: 'Foster C. Monitoring training in athletes with reference to overtraining syndrome. Med Sci Sports Exerc 30(7):1164–1168 (1998)',
    doi: '10.1097/00005768-199807000-00023',
  },
  {
    id: 'D23',
    cite: 'McGuigan MR, Foster C. A New Approach to Monitoring Resistance Training. Strength Cond J 26(6):42–47 (2004)',
    doi: '10.1519/00126548-200412000-00008',
  },
  {
    id: 'E01',
    cite: "Riebe D, Franklin BA, Thompson PD, Garber CE, Whitfield GP, Magal M, Pescatello LS. Updating ACSM's Recommendations for Exercise Preparticipation Health Screening. Med Sci Sports Exerc 47(11):2473–2479 (2015)",
    doi: '10.1249/MSS.0000000000000664',
  },
  {
    id: 'E02',
    cite: "ACSM. ACSM's Guidelines for Exercise Testing and Prescription, 10th edition, chapter 2. Wolters Kluwer (2018)",
    doi: null,
  },
  {
    id: 'E03',
    cite: 'Whitfield GP, Riebe D, Magal M, Liguori G. Applying the ACSM Preparticipation Screening Algorithm to U.S. Adults: NHANES 2001-2004. Med Sci Sports Exerc 49(10):2056–2063 (2017)',
    doi: '10.1249/MSS.0000000000001331',
  },
  {
    id: 'E04',
    cite: 'Song SH, Koo JH. Bone Stress Injuries in Runners: a Review for Raising Interest in Stress Fractures in Korea. J Korean Med Sci 35(8):e38 (2020)',
    doi: '10.3346/jkms.2020.35.e38',
  },
  {
    id: 'E05',
    cite: 'Warden SJ, Davis IS, Fredericson M. Management and Prevention of Bone Stress Injuries in Long-Distance Runners. J Orthop Sports Phys Ther 44(10):749–765 (2014)',
    doi: '10.2519/jospt.2014.5334',
  },
  {
    id: 'E07',
    cite: 'Silbernagel KG, Thomee R, Eriksson BI, Karlsson J. Continued sports activity, using a pain-monitoring model, during rehabilitation in patients with Achilles tendinopathy. Am J Sports Med 35(6):897–906 (2007)',
    doi: '10.1177/0363546506298279',
  },
  {
    id: 'E09',
    cite: 'ACOG Committee on Obstetric Practice (Birsner ML, Gyamfi-Bannerman C). Physical Activity and Exercise During Pregnancy and the Postpartum Period. Committee Opinion No. 804. Obstet Gynecol 135(4):e178-e188 (2020)',
    doi: '10.1097/AOG.0000000000003772',
  },
  {
    id: 'E11',
    cite: 'Goom T, Donnelly G, Brockwell E. Returning to running postnatal – guidelines for medical, health and fitness professionals managing this population. Published by the authors (2019)',
    doi: null,
  },
  {
    id: 'E12',
    cite: 'Brenner JS (AAP Council on Sports Medicine and Fitness). Sports Specialization and Intensive Training in Young Athletes. Pediatrics 138(3):e20162148 (2016)',
    doi: '10.1542/peds.2016-2148',
  },
  {
    id: 'E15',
    cite: "Mountjoy M, Ackerman KE, Bailey DM, et al. 2023 International Olympic Committee's (IOC) consensus statement on Relative Energy Deficiency in Sport (REDs). Br J Sports Med 57(17):1073–1098 (2023)",
    doi: '10.1136/bjsports-2023-106994',
  },
  {
    id: 'E16',
    cite: "Roberts WO, Armstrong LE, Sawka MN, Yeargin SW, Heled Y, O'Connor FG. ACSM Expert Consensus Statement on Exertional Heat Illness. Curr Sports Med Rep 20(9):470–484 (2021)",
    doi: '10.1249/JSR.0000000000000878',
  },
  {
    id: 'E18',
    cite: "Binkley HM, Beckett J, Casa DJ, Kleiner DM, Plummer PE (NATA). National Athletic Trainers' Association Position Statement: Exertional Heat Illnesses. J Athl Train 37(3):329–343 (2002)",
    doi: null,
  },
];
