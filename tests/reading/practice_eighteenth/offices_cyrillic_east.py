"""The offices that write Russian, Chinese and Japanese."""

from practice_eighteenth.office import export, office

OFFICES = (
    office(
        "ru",
        "class with deviations",
        """names=Вентилятор ВР-200|Насос консольный НК-32|Электрошпиндель ЭШ-12|Центрифуга ЦФ-3;
        bearings=6205-2RS|6206-2RS|6305-2RS|6306-2RS; station=Опора; bearing=Подшипник; shaft=Шейка вала;
        housing=Отверстие корпуса; s.p=шейки вала; h.p=отверстия корпуса; full={f} {p}; part=Деталь;
        param=Показатель; value=Значение; unit=Ед. изм.; no=№ п/п; name=Изделие; dwg=Обозначение чертежа;
        rev=Изм.; nmax=Максимальная частота вращения; life=Требуемый ресурс L10h;
        tamb=Температура окружающей среды; mass=Масса ротора; des=Обозначение подшипника;
        Fr=Радиальная нагрузка; Fa=Осевая нагрузка; role=Фиксация опоры; seat=Диаметр; ra=Шероховатость Ra;
        cyl=Допуск цилиндричности; run=Полное радиальное биение; sh=Диаметр заплечика;
        fil=Радиус галтели не более; x1=Примечание:/уточнить; x2=Материал по ГОСТ:;
        title=Ведомость посадок подшипников~~Разраб.: Лукин~Пров.: Орлов;
        foot=Неуказанные предельные отклонения по ГОСТ 30893.1-m""",
        export("positions", "csv ; cp1251", "Передняя,Задняя", skip="fil mass"),
        export(
            "down",
            "xlsx",
            "Опора А,Опора Б",
            part="column",
            units="column",
            numbered=True,
            skip="role",
            words={"s.p": "вал"},
        ),
        comma=True,
        brackets=", {}",
        block="across",
    ),
    office(
        "zh",
        "class column",
        """names=罗茨风机 LF-40|砂轮主轴 SL-15|高速泵 GB-22|离心脱水机 LX-5;
        bearings=6205-2RS|6206-2RS/C3|6305-2RS|6306-2RS; station=轴承部位; bearing=轴承; shaft=轴颈;
        housing=轴承座孔; s.p=轴颈; h.p=座孔; full={p}{f}; part=零件; param=检验项目; value=数值; unit=计量单位;
        no=序号; name=产品型号; dwg=图样代号; rev=版本; nmax=最高转速; life=要求寿命 L10h; tamb=环境温度;
        mass=转子质量; des=轴承代号; Fr=径向载荷; Fa=轴向载荷; lub=润滑方式; seat=公称直径; cls=公差带;
        ra=表面粗糙度Ra; cyl=圆柱度; run=径向全跳动; sh=轴肩直径; h.sh=孔肩直径; s.sh=轴肩直径;
        fil=圆角半径 max; x1=备注:/借用; x2=物料编码:30#0#12/30#0#77;
        title=轴承配合明细表~~编制：李工~校对：王工""",
        export("positions", "csv , gb18030", "电机侧,风机侧", skip="fil"),
        export("seats", "xlsx merge", "前端,后端", once=True, units="row", skip="tamb", words={"sh": "挡肩直径"}),
        brackets="（{}）",
        block="across",
    ),
    office(
        "ja",
        "class with deviations",
        """names=ルーツブロワ RB-50|研削スピンドル KS-18|うず巻ポンプ UP-40|遠心分離機 ES-6;
        bearings=6205ZZ|6206ZZ|6305ZZ|6306ZZ; station=軸受位置; bearing=軸受; shaft=軸; housing=ハウジング;
        machine=機械仕様; s.p=軸; h.p=ハウジング; full={p}{f}; part=部品; param=項目; value=値; unit=単位;
        no=番号; name=機種; dwg=図番; rev=改訂; nmax=最高回転数; nop=常用回転数; life=要求寿命L10h;
        tamb=周囲温度; tsh=軸温度; tho=ハウジング温度; des=軸受呼び番号; C=基本動定格荷重C; C0=基本静定格荷重C0;
        Fr=ラジアル荷重; Fa=アキシアル荷重; seat=はめあい部直径; ra=表面粗さRa; cyl=円筒度; run=全振れ; sh=肩径;
        fil=隅R最大; x1=備考:/要確認; title=軸受はめあい一覧~~作成：田中~承認：鈴木;
        sentence=寸法の単位はmm、表面粗さRaの単位はµm""",
        export("positions", "csv , cp932", "負荷側,反負荷側", skip="C C0 tsh tho nop"),
        export("down", "xlsx", "前側軸受,後側軸受", part="line", units="column", skip="tamb fil"),
        export("blocks", "csv , utf-8-sig", "負荷側,反負荷側", parted=True, units="title", skip="C C0 tsh tho"),
        brackets="（{}）",
        join="",
    ),
    office(
        "ru",
        "deviation columns",
        """names=Воздуходувка ВД-60|Насос шестерённый НШ-10|Барабан сушильный БС-4|Стенд испытательный СИ-2;
        bearings=6204-2Z|6205-2Z|6304-2Z|6305-2Z; station=Место установки; bearing=Подшипник; shaft=Вал;
        housing=Корпус; machine=Общие данные; s.p=вал; h.p=корпус; full={f} ({p}); part=Элемент; param=Параметр;
        value=Номинал; unit=Единица; no=№; name=Машина; dwg=Чертёж №; nmax=Наибольшая частота вращения;
        nop=Рабочая частота вращения; tsh=Температура вала; tho=Температура корпуса; orient=Расположение вала;
        type=Тип подшипника; des=Подшипник; d=Внутренний диаметр d; D=Наружный диаметр D; Fr=Радиальная сила Fr;
        temp=Рабочая температура подшипника; seat=Посадочный диаметр; up=Верхнее откл.; lo=Нижнее откл.; ra=Ra;
        cyl=Цилиндричность; shr=Торцевое биение заплечика; sh=Диаметр заплечика;
        gd=Диаметр канавки под стопорное кольцо; gw=Ширина канавки под стопорное кольцо; x1=Поставщик:П-#1/П-#4;
        title=Карта параметров подшипниковых узлов|Дата: 14.02.2025""",
        export("features", "csv ; utf-8-sig", "Левая опора,Правая опора", units="column", skip="type tsh tho orient"),
        export("positions", "xlsx merge", "Привод,Середина,Свободный конец", two=True, skip="type gd gw nop"),
        export(
            "long",
            "csv tab utf-8",
            "А,Б",
            columns="no station part param value unit",
            units="column",
            skip="d D gd gw temp",
        ),
        comma=True,
        fine="µm",
        dev="µm",
        brackets=" [{}]",
    ),
    office(
        "zh",
        "deviations",
        """names=磁力泵 CB-10|涡轮风扇 WL-30|绕线机主轴 RX-8|搅拌机 JB-6; bearings=6003-2Z|6004-2Z|6203-2Z|6204-2Z;
        station=位置; bearing=轴承; shaft=轴; housing=轴承座; machine=整机; s.p=轴; h.p=轴承座; full={p}：{f};
        part=部件; param=参数名称; value=参数值; unit=单位; no=编号; name=机型; dwg=图号; rev=版次;
        nmax=最高工作转速; nop=常用转速; tmax=整机最高温度; tamb=环境温度; smat=轴材料; hmat=轴承座材料;
        bal=平衡等级; des=轴承型号; d=轴承内径d; D=轴承外径D; B=轴承宽度B; clr=游隙组别; Fr=径向力Fr;
        seat=配合直径; ra=粗糙度Ra; cyl=圆柱度公差; run=全跳动公差; sh=挡肩直径; shr=挡肩端面跳动;
        x1=来源:图纸/计算""",
        export("long", "csv , utf-8", "A端,B端", columns="no station part param value unit", skip="B tmax"),
        export(
            "nested",
            "json",
            "A端,B端",
            case="camel",
            top="rotor",
            holds="supports",
            label="side",
            skip="smat hmat",
            form="deviation columns",
            words={"up": "上偏差", "lo": "下偏差"},
        ),
        units="column",
    ),
    office(
        "ja",
        "limit columns",
        """names=送風機 SF-31|電動工具主軸 DK-4|真空ポンプ VP-12|巻取ロール MR-80;
        bearings=6203DDU|6204DDU|6205DDU C3|6303DDU; station=取付位置; bearing=玉軸受; shaft=シャフト;
        housing=ハウジング穴; machine=装置; s.p=シャフト; h.p=ハウジング穴; full={p} {f}; part=部位;
        param=管理項目; value=規格値; unit=単位; no=No.; text=品名; qty=数量; name=装置名; dwg=図面番号; rev=版;
        nmax=最高回転速度; life=必要寿命; mass=ロータ質量; bal=釣合い等級; span=軸受間距離; des=軸受型番;
        Fr=ラジアル荷重Fr; nut=ナット締付トルク; temp=軸受温度; seat=直径; min=最小径; max=最大径; ra=粗さRa;
        cyl=円筒度公差; run=全振れ公差; sh=肩の直径; fil=すみ肉半径(最大); x1=担当:佐藤/森;
        x2=コスト(円):3#0/4#0; title=部品表（回転部）~~出図日 2025/03/21""",
        export("machines", "xlsx merge", "モータ側,ファン側", rotors=2, levels=3, skip="nut temp span fil"),
        export("parts", "csv , cp932", "前,後", located=True, skip="bal"),
        brackets="[{}]",
        units="head",
    ),
)
