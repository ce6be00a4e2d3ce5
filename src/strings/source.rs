//! The bibliography: where every number and formula of the model comes from.
//!
//! A value says how sure it is by its [`Evidence`], and where it comes from by a [`Source`].

/// How a value is known; shown beside it on screen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Evidence {
    /// Measured by the person who asks, on their instrument or string.
    Measured,
    /// Printed in a paper, a standard, a handbook or a data set.
    Published,
    /// Computed from the other grades by a formula that has been published and checked.
    Computed,
    /// Common practice of the trade, or a judgement of perception.
    Judged,
    /// From memory, or by analogy: the range is wide on purpose.
    Guessed,
}

/// A bibliography entry.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Source {
    /// The key by which replies and screens name it.
    pub key: &'static str,
    /// Who wrote it.
    pub authors: &'static str,
    /// What it is called.
    pub title: &'static str,
    /// Where and when it appeared, with a DOI where there is one.
    pub place: &'static str,
    /// What has to be known to use it rightly: second-hand, misprint, choice made.
    pub remark: &'static str,
}

macro_rules! sources {
    ($($name:ident = $key:literal, $authors:literal, $title:literal, $place:literal, $remark:literal;)*) => {
        $(#[doc = $title] pub const $name: Source = Source {
            key: $key, authors: $authors, title: $title, place: $place, remark: $remark,
        };)*
        /// Every entry, in the order of this file.
        pub const ALL: &[Source] = &[$($name),*];
    };
}

sources! {
    MERSENNE = "mersenne-1636", "M. Mersenne", "Harmonie universelle", "Paris, 1636", "with Taylor 1713: f = sqrt(T/mu)/2L; textbook form";
    FLETCHER_1964 = "fletcher-1964", "H. Fletcher", "Normal vibration frequencies of a stiff piano string", "J. Acoust. Soc. Am. 36, 203, 1964", "pinned and clamped ends; the share of a covering in bending stiffness read in the abstract";
    WOODHOUSE_2004 = "woodhouse-2004", "J. Woodhouse", "Plucked guitar transients: comparison of measurements and synthesis", "Acta Acust. u. Acust. 90, 945, 2004, Table I", "as cited in secondary texts";
    WOODHOUSE_LYNCH_AIRD_2019 = "woodhouse-lynch-aird-2019", "J. Woodhouse, N. Lynch-Aird", "Choosing strings for plucked musical instruments", "Acta Acust. u. Acust. 105, 516, 2019, eqs. 8, 10, 16, 18, 19", "as cited in secondary texts";
    LYNCH_AIRD_2017 = "lynch-aird-2017", "N. Lynch-Aird, J. Woodhouse", "Mechanical properties of nylon harp strings", "Materials 10(5), 497, 2017, doi 10.3390/ma10050497", "abstract and section 4.1 read; the tables were not";
    LYNCH_AIRD_2018 = "lynch-aird-2018", "N. Lynch-Aird, J. Woodhouse", "Comparison of mechanical properties of natural gut and synthetic polymer harp strings", "Materials 11(11), 2160, 2018, doi 10.3390/ma11112160", "abstract and section 3.1 read";
    LYNCH_AIRD_TWIST = "lynch-aird-twist", "N. Lynch-Aird, J. Woodhouse", "Effects of twisting and surface finish on the mechanical properties of natural gut harp strings", "data set, Cambridge repository", "abstract read: twist 23.5 to 58.3 degrees; strength and modulus fall with twist";
    LAMPIS_2025 = "lampis-2025", "A. Lampis, V. Chatziioannou, G. Scavone", "Cello string properties, Table 1", "Proc. Mtgs. Acoust. 58, 035013, 2025", "as cited in secondary texts; 29 % scatter of bending stiffness on remounting: JASA-EL 2024, doi 10.1121/10.0034330";
    YOUNG_1952 = "young-1952", "R. W. Young", "Inharmonicity of plain wire piano strings", "J. Acoust. Soc. Am. 24, 267, 1952", "abstract read: E/rho = 25.5e10 cgs, so E = 200.2 GPa at 7850 kg/m3";
    SHIGLEY = "shigley", "J. E. Shigley, C. R. Mischke", "Mechanical engineering design", "McGraw-Hill", "endurance in bending and Goodman's line; textbook form";
    ASTM_A228 = "astm-a228", "ASTM", "A228/A228M Standard specification for steel wire, music spring quality", "ASTM International", "least and greatest strengths from a wire supplier's copy; the least are the model's table";
    EN_10270 = "en-10270-1", "CEN", "EN 10270-1 Steel wire for mechanical springs: patented cold drawn", "CEN", "formulas from memory; table as cited by a spring maker";
    PERIODICTABLE = "periodictable", "P. Kienzle and others", "periodictable 2.1.0: densities of the elements", "Python package", "differs from mendeleev 1.3.0 by up to 0.8 %";
    COSTELLO_1997 = "costello-1997", "G. A. Costello", "Theory of wire rope, 2nd ed., ch. 3", "Springer, 1997", "the cosine rule is used; full theory within 1.1 % of it for one layer of six";
    HEARLE_1969 = "hearle-1969", "J. W. S. Hearle, P. Grosberg, S. Backer", "Structural mechanics of fibers, yarns, and fabrics", "Wiley, 1969", "with Gegauff 1907: E_yarn/E_fibre = cos^2 of the surface twist angle";
    ANDERSON_2024 = "anderson-beausoleil-2024", "M. Anderson, R. Beausoleil", "Classical guitar intonation and compensation: the well-tempered guitar", "J. Acoust. Soc. Am. 156, 683, 2024", "abstract read; tension rise exceeds length flattening";
    GUETTLER_PROPERTIES = "guettler-properties", "K. Guettler", "Typical string properties (violin, L = 0.328 m)", "as cited in secondary texts", "ranges over sets on sale; the upper impedance printed for D is inconsistent and not used";
    GUETTLER_2002 = "guettler-2002", "K. Guettler", "On the creation of the Helmholtz motion in bowed strings", "Acta Acust. u. Acust. 88, 970, 2002, eq. 8", "as cited in secondary texts";
    EUPHONICS = "euphonics", "J. Woodhouse", "Euphonics: the science of musical instruments, 7.2.2 and 9.3.1", "euphonics.org", "read: ten overtones below a bending loss of about 2e-3; force jump 2 Z0 v/beta";
    HERITAGE_2013 = "heritage-2013", "various", "The effects of hydration on the collagen and gelatine phases within parchment artefacts, Table 1", "Heritage Science 1:14, 2013", "collagen sorption at 25 degrees";
    DERRINGER_SUICH_1980 = "derringer-suich-1980", "G. Derringer, R. Suich", "Simultaneous optimization of several response variables", "J. Quality Technology 12, 214, 1980", "read in the NIST/SEMATECH e-Handbook, 5.5.3.2.2";
    ISO_16 = "iso-16", "ISO", "ISO 16:1975 Acoustics: standard tuning frequency", "ISO", "A4 = 440 Hz";
    FRENCH_SAVART = "french-savart", "M. French, and others", "Initial behavior of nylon guitar strings", "Savart Journal", "abstract: creep for hours to days, more in solid than in stranded strings";
    HART_1875 = "hart-1875", "G. Hart", "The violin, section III", "London, 1875", "tension 18 lb gives downforce 8 lb";
    GRAHAM_1998 = "graham-1998", "R. L. Graham, B. D. Lubachevsky and others", "Dense packings of congruent circles in a circle", "Discrete Math. 181, 139, 1998", "closed forms recomputed";
    WOOD_HANDBOOK = "wood-handbook", "Forest Products Laboratory", "Wood handbook, GTR-190", "USDA, 2010", "coefficient of thermal expansion along the grain 3.1 to 4.5e-6/K, from memory";
    HANDBOOK = "handbook", "various", "Handbook values for engineering materials", "several", "as cited in secondary texts, or from memory where marked guessed";
    STATICS = "statics", "-", "Statics and geometry", "derived", "an identity";
    JND = "jnd", "various", "Just-noticeable differences: level 1 dB, pitch 3 to 5 cents, damping 5 %", "see Hill & Summers 2007; Jarvelainen & Tolonen 2001; others", "as cited in secondary texts";
    SCHELLENG_1973 = "schelleng-1973", "J. C. Schelleng", "The bowed string and the player", "J. Acoust. Soc. Am. 53, 26, 1973", "as restated in Euphonics 9.3.1, eq. 3";
    SCHOONDERWALDT_2008 = "schoonderwaldt-2008", "E. Schoonderwaldt, K. Guettler, A. Askenfelt", "An empirical investigation of bow-force limits in the Schelleng diagram", "Acta Acust. u. Acust. 94, 604, 2008", "as cited in secondary texts; least force found independent of bow speed";
    WOODHOUSE_LOACH_1999 = "woodhouse-loach-1999", "J. Woodhouse, A. R. Loach", "Torsional behaviour of cello strings", "Acta Acust. u. Acust. 85, 734, 1999", "as cited in van Walstijn and others, Acta Acustica 10, 47, 2026, Table 1";
    BAVU_2005 = "bavu-2005", "E. Bavu, J. Smith, J. Wolfe", "Torsional waves in a bowed string", "Acta Acust. u. Acust. 91, 241, 2005", "torsional and transverse Q of a bass string, as cited in secondary texts";
    STOKES = "stokes", "G. G. Stokes; N. H. Fletcher, T. D. Rossing", "Air damping of a cylinder, in The physics of musical instruments, sec. 2.12", "Springer", "from memory";
    RESIN_MAKER = "resin-maker", "a resin maker", "Water uptake of polyamides at 23 degrees and 60 % humidity", "technical page", "as cited in secondary texts: PA66 2.5 %, PA6 3.5 %";
    MSW_1983 = "mcintyre-schumacher-woodhouse-1983", "M. E. McIntyre, R. T. Schumacher, J. Woodhouse", "On the oscillations of musical instruments", "J. Acoust. Soc. Am. 74, 1325, 1983", "as cited in page-referenced notes; Fig. 7: 268 steps against 256";
    WOODHOUSE_2003 = "woodhouse-2003", "J. Woodhouse", "Bowed string simulation using a thermal friction model", "Acta Acust. u. Acust. 89, 355, 2003", "as cited in secondary texts; the straight fall of friction is read off its fig. 3";
    VAN_WALSTIJN_2026 = "van-walstijn-2026", "M. van Walstijn, V. Chatziioannou, A. Lampis, E. Matusiak", "Thermal elasto-plastic friction of the bowed string, Table 1", "Acta Acustica 10, 47, 2026", "as cited in secondary texts; a length is missing in the units of the balance of heat";
    SMITH_WOODHOUSE_2000 = "smith-woodhouse-2000", "J. H. Smith, J. Woodhouse", "The tribology of rosin", "J. Mech. Phys. Solids 48, 1633, 2000", "steady sliding, as cited in secondary texts";
    ZHANG_2016 = "zhang-2016", "A. Zhang, J. Woodhouse, G. Stoppani", "Motion of the cello bridge", "J. Acoust. Soc. Am. 140, 2636, 2016", "modes of one cello, as cited in secondary texts";
    DIN_45692 = "din-45692", "DIN", "DIN 45692:2009 Measurement technique for the simulation of the auditory sensation of sharpness", "DIN", "as in mosqito 1.2.1";
    ISO_532 = "iso-532-1", "ISO", "ISO 532-1:2017 Methods for calculating loudness: Zwicker method", "ISO", "with E. Zwicker, H. Fastl 1991, J. Acoust. Soc. Jpn. (E) 12, 1; tables as in mosqito 1.2.1";
    MOSQITO = "mosqito", "Green Forge Coop", "mosqito 1.2.1: sound quality metrics", "Python package", "its tables of ISO 532-1 and DIN 45692 were read; its results are compared with";
    BS_1770 = "bs-1770", "ITU-R", "BS.1770 Algorithms to measure audio programme loudness and true-peak audio level", "ITU", "coefficients at 48 kHz from memory; a full-scale sine of 997 Hz reads -3.01";
    CRANK_1975 = "crank-1975", "J. Crank", "The mathematics of diffusion, 2nd ed., sec. 5.3", "Oxford, 1975", "a cylinder: the series and its form for short times, from memory; held against a solution by finite differences";
    EN_1992 = "en-1992-1-1", "CEN", "EN 1992-1-1:2004 Design of concrete structures, 3.3.2(7), eq. 3.28", "CEN", "relaxation of prestressing wire, as cited in secondary texts; 8 % of class 1 from memory";
    GROVES_KEMP_2019 = "groves-kemp-2019", "T. Groves, J. A. Kemp", "Applicability of the capstan equation to guitar strings", "Archives of Acoustics, 2019", "abstract read: friction on a saddle under 0.17 plain and 0.26 wound";
    WALTON_1983 = "walton-1983", "P. L. Walton, A. J. Majumdar", "Creep of Kevlar 49 fibre and a Kevlar 49-cement composite", "J. Mater. Sci. 18(10), 2939, 1983, doi 10.1007/BF00700774", "abstract read: 13 % of the elastic strain after 1000 days";
    WANG_1993 = "wang-1993", "J. Z. Wang, D. A. Dillard and others", "The effects of moisture sorption on the creep behavior of fibers", "ASTM STP 1189, 1993", "abstract read: up to three times the creep where humidity cycles";
    BALTUSSEN_2003 = "baltussen-2003", "J. J. M. Baltussen, M. G. Northolt", "The viscoelastic extension of polymer fibres: complex loadings", "Polymer 44(6), 1957, 2003", "abstract read, authors from memory: relaxation over creep goes with the tangent modulus";
    YAMAGUCHI_1959 = "yamaguchi-1959", "S. Yamaguchi", "Creep and recovery properties of textile fibers", "J. Text. Mach. Soc. Japan 5(2), 14, 1959", "abstract read: polyester creeps very little and hardly minds humidity";
    HUMEAU_2018 = "humeau-2018", "C. Humeau, P. Davies, P.-Y. Le Gac, F. Jacquemin", "Influence of water on the short and long term mechanical behaviour of polyamide 6 fibres and yarns", "Multiscale Multidiscip. Model. Exp. Des., 2018, doi 10.1007/s41939-018-0036-6", "abstract read: small on the short-term, strong on the long-term response; no number seen";
    MORTON_HEARLE = "morton-hearle", "W. E. Morton, J. W. S. Hearle", "Physical properties of textile fibres, sec. 11.3, Table 11.1", "Woodhead, 2008", "swelling read in a stored copy; regain of fibres from memory";
    CHOY_1981 = "choy-1981", "C. L. Choy, F. C. Chen, K. Young", "Negative thermal expansion in oriented crystalline polymers", "J. Polym. Sci. Polym. Phys. 19(2), 335, 1981, doi 10.1002/pol.1981.180190213", "abstract read: along the draw direction -1e-5 to -1e-4 a kelvin";
    KEULEGAN_1933 = "keulegan-1933", "G. H. Keulegan, M. R. Houseman", "Temperature coefficient of the moduli of metals and alloys used as elastic elements", "NBS J. Res. 10, RP531, 1933", "abstract read; numbers from memory";
    GOLI_2017 = "goli-2017", "G. Goli and others", "Monitoring the hygroscopic behaviour of a violin", "Int. J. Conserv. Sci. 8, 177, 2017", "abstract read: a violin's mass follows the room within hours, partly";
    FOOTE_2003 = "foote-2003", "E. Foote", "What a new piano wire loses, step by step", "Pianotech list, 12 July 2003", "one wire, measured: 16 cents by itself, 21 by lifting at its bends, 15 by tightening the coil";
    PRACTICE = "practice", "the trade", "Common practice", "-", "no source; from memory, widened";
}
